"""The least length of a schedule of bars by trying every start; shares nothing with the engine."""

from itertools import permutations


def least_length(width, bars, most):
    """`bars` are (size across, length along, residues, step, columns); None: free. At most `most`."""
    return next((length for length in range(1, most) if _starts(width, bars, [[] for _ in range(length)])), most)


def _starts(width, bars, rows):
    if not bars:
        return True
    _, long, residues, step, _ = bar = bars[0]
    for y in range(len(rows) - long + 1):
        if residues is not None and y % step not in residues:
            continue
        taken = [[*row, bar] if y <= at < y + long else row for at, row in enumerate(rows)]
        if all(_fits(width, row) for row in taken[y : y + long]) and _starts(width, bars[1:], taken):
            return True
    return False


def _fits(width, row):
    return any(_ends(order) <= width for order in permutations(row))


def _ends(order):
    right = 0
    for wide, _, _, _, columns in order:
        start = right if columns is None else min((x for x in columns if x >= right), default=1 << 30)
        right = start + wide
    return right
