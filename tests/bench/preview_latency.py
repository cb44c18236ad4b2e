"""How long it takes from saving a story to an open page hearing of it, on a copy of the demo.

    python -m tests.bench.preview_latency [TIMES]

Prints one figure a save, in seconds: from before the write of story.md until the event has arrived.
"""

import shutil
import sys
import tempfile
import time
from pathlib import Path
from statistics import median

from tests.demo_patterns import CONTENT
from tests.previewing import previewing


def main(times: int) -> None:
    with tempfile.TemporaryDirectory() as home:
        content = Path(home) / "content"
        shutil.copytree(CONTENT, content)
        story = sorted(content.glob("series/*/*/story.md"))[0]
        begun = time.perf_counter()
        with previewing(content) as preview:
            page = preview.page()
            page.hears_of(lambda news: news["version"], within_s=600)
            print(f"first pages:  {time.perf_counter() - begun:6.2f} s")
            page.hears_of(lambda news: "Drawing" not in news["strip"], within_s=600)
            print(f"all pictures: {time.perf_counter() - begun:6.2f} s")
            taken = []
            for number in range(times):
                text = story.read_text("utf-8") + f"\nA line more: {number}.\n"
                begun = time.perf_counter()
                story.write_text(text, "utf-8")
                page.hears()
                taken.append(time.perf_counter() - begun)
                print(f"saved story:  {taken[-1]:6.2f} s")
                time.sleep(0.5)
            print(f"median:       {median(taken):6.2f} s")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 10)
