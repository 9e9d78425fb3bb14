"""The shortest lay plan of a strip by OR-tools CP-SAT; shares nothing with the engine."""

from itertools import pairwise

from layout_checker import extents, middle, point, repeat_for


def shortest(strip, most, effort):
    """The least length of any plan, known to be at most `most`; None if that much counted effort did not tell."""
    from ortools.sat.python import cp_model

    model = cp_model.CpModel()
    length = model.new_int_var(1, most, "length")
    _Model(model, strip, most, length).lay()
    model.minimize(length)
    solver = cp_model.CpSolver()
    solver.parameters.max_deterministic_time = effort
    solver.parameters.num_workers = 1
    status = solver.solve(model)
    assert status != cp_model.INFEASIBLE
    return round(solver.objective_value) if status == cp_model.OPTIMAL else None


class _Model:
    """Every copy takes one turn and one place; what the planner may choose for all of them is a variable as well."""

    def __init__(self, model, strip, most, length):
        self.model, self.strip, self.most, self.length = model, strip, most, length
        along = strip.repeat.along if strip.repeat and strip.start == "choose" else 0
        self.phase = model.new_int_var(0, max(along - 1, 0), "phase")
        self.turned = {}  # (turn group, turn): whether it is taken
        self.centres = {}  # alike group: its common point
        self.across, self.along, self.wide, self.high = [], [], [], []

    def lay(self):
        for panel in self.strip.panels:
            copies = [self._lay_copy(panel) for _ in range(panel.qty)]
            for one, next_one in pairwise(copies):
                self.model.add(one <= next_one)  # copies are alike: one order is enough
        self.model.add_no_overlap_2d(self.across, self.along)
        # Neither is needed, both help the solver: what lies on one line fits the width, or the length.
        self.model.add_cumulative(self.along, self.wide, self.strip.width + self.strip.gap)
        self.model.add_cumulative(self.across, self.high, self.length + self.strip.gap)

    def _lay_copy(self, panel):
        model, gap = self.model, self.strip.gap
        x, y = model.new_int_var(0, self.strip.width, "x"), model.new_int_var(0, self.most, "y")
        ways = []
        for turn in panel.turns:
            w, h = extents(panel, turn)
            way = model.new_bool_var("way")
            ways.append(way)
            model.add(x + w <= self.strip.width).only_enforce_if(way)
            model.add(y + h <= self.length).only_enforce_if(way)
            self.across.append(model.new_optional_fixed_size_interval_var(x, w + gap, way, "across"))
            self.along.append(model.new_optional_fixed_size_interval_var(y, h + gap, way, "along"))
            self.wide.append(w + gap)
            self.high.append(h + gap)
            self._clear_of_flaws(x, y, w, h, way)
            self._on_the_repeat(panel, turn, x, y, way)
            if panel.turn_group is not None:
                key = panel.turn_group, turn
                model.add_implication(way, self.turned.setdefault(key, model.new_bool_var("turned")))
                for other in (0, 90, 180, 270):
                    if other != turn:
                        taken = self.turned.setdefault((panel.turn_group, other), model.new_bool_var("turned"))
                        model.add_implication(way, ~taken)
        model.add_exactly_one(ways)
        return y

    def _clear_of_flaws(self, x, y, w, h, way):
        for f in self.strip.flaws:
            sides = [self.model.new_bool_var("side") for _ in range(4)]
            for side, apart in zip(sides, (x >= f.x + f.w, x + w <= f.x, y >= f.y + f.h, y + h <= f.y), strict=True):
                self.model.add(apart).only_enforce_if(side)
            self.model.add_bool_or(sides).only_enforce_if(way)

    def _on_the_repeat(self, panel, turn, x, y, way):
        repeat = self.strip.repeat
        if repeat is None or (panel.motif is None and panel.group is None):
            return
        if panel.motif is not None:
            dx, dy = point(panel, turn)
            spots = [(m.ox, m.oy + self.phase) for m in self.strip.motifs if m.id == panel.motif]
        else:
            dx, dy = middle(panel, turn)
            centre = self.centres.get(panel.group)
            if centre is None:
                centre = self._number(max(repeat.across, 1)), self._number(max(repeat.along, 1))
                self.centres[panel.group] = centre
            spots = [centre]
        across, along, drop = repeat_for(self.strip, panel)
        chosen = [self.model.new_bool_var("spot") for _ in spots]
        for (ox, oy), spot in zip(spots, chosen, strict=True):
            columns, rows = (self.model.new_int_var(-self.most * 4 - 99, self.most * 4 + 99, "n") for _ in range(2))
            if across:
                self.model.add(x + dx == ox + columns * across).only_enforce_if(spot)
            else:
                self.model.add(columns == 0)
            if along:
                shift = columns * drop + rows * along
                self.model.add(y + dy == oy + shift).only_enforce_if(spot)
        self.model.add_bool_or(chosen).only_enforce_if(way)

    def _number(self, most):
        return self.model.new_int_var(0, most - 1, "place")
