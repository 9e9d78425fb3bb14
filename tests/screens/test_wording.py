"""American wording: chosen once in the settings, it holds for the names of controls and for what the core says."""

import re

from maker import Maker
from playwright.sync_api import expect
from test_looks import bring_in

ANSWER_MS = 60_000

# Whole words, and the beginnings of others, that American makers do not use (spellings as in American dictionaries).
BRITISH = (
    r"\b(zips?\b|zipped|pip(ed|ing)\b|frill|haberdash|selvedge|overlock|tack(ed|ing)?\b|mitre|fibre|centre|\w*metres?\b"
    r"|anticlock|neighbour|colour|grey)"
)


def speak_american(maker: Maker) -> None:
    maker.press("home.settings")
    maker.choose("American")
    maker.press("job.back")


def test_no_british_word_is_left_in_the_american_table(maker: Maker) -> None:
    speak_american(maker)
    left = maker.page.evaluate(
        """async (british) => {
          const { languages, say, has } = await import('./words/words.js');
          const { controls, fields } = await import('./words/controls.js');
          const keys = Object.keys(languages['en-GB'].words);
          for (const [screen, names] of Object.entries(controls)) {
            for (const [key, [, name]] of Object.entries(names)) {
              if (typeof name === 'string') keys.push(`${screen}.${key}`);
              else keys.push(...Object.keys(name).map((value) => `choice:${screen}.${key}=${value}`));
            }
          }
          for (const [path, { names, options }] of Object.entries(fields)) {
            keys.push(`field:${path}`, ...Object.keys(names ?? {}).map((kind) => `field:${path}=${kind}`));
            keys.push(...Object.keys(options ?? {}).map((value) => `option:${path}=${value}`));
          }
          const text = (key) => { try { return say(key, { count: 2 }); } catch { return ''; } };
          return keys.filter((key) => has(key) && new RegExp(british, 'i').test(text(key)));
        }""",
        BRITISH,
    )
    assert left == []


def test_what_the_core_says_is_in_the_words_of_the_settings(maker: Maker) -> None:
    page = maker.page
    speak_american(maker)
    name = bring_in(page, "job-bay-window")
    maker.open_job(name)
    maker.go_to("make")
    expect(page.locator(".identity-code")).to_be_visible(timeout=ANSWER_MS)
    expect(page.get_by_role("checkbox", name="Put in the zipper")).to_have_count(1)
    expect(page.get_by_role("checkbox", name="Make the welting")).to_have_count(1)
    assert not re.search(BRITISH, page.locator("main").inner_text(), re.IGNORECASE)
    maker.go_home()
    maker.press("home.settings")
    maker.choose("British")
    maker.press("job.back")
    maker.open_job(name)
    maker.go_to("make")
    expect(page.get_by_role("checkbox", name="Put in the zip", exact=True)).to_have_count(1, timeout=ANSWER_MS)
