"""Brings the files of translations up to date with the source, and compiles them for the window.

    python3 -m workbench_pkg.translations.collect          texts that are new are listed, gone ones leave the file
    python3 -m workbench_pkg.translations.collect fr       begins one more language

Then write the missing translations into ``workbench_pkg/resources/translations/heartside_LANGUAGE.ts`` (any editor,
or Qt's own) and run it again. Compiling needs Qt's ``lrelease``: Debian has it in ``qttools5-dev-tools``, PyPI in
``PySide6-Essentials``.
"""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
from pathlib import Path

from workbench_pkg.translations.files import FOLDER, file_of, languages, read, write
from workbench_pkg.translations.literals import literals

CODE = re.compile(r"[a-z]{2,3}(_[A-Z]{2})?")
COMPILERS = ("lrelease", "lrelease-qt5", "lrelease6", "pyside6-lrelease", "/usr/lib/qt6/bin/lrelease")


def main(arguments: list[str]) -> int:
    """1 where something is left to do, 2 where a word is no code of a language."""
    wrong = [word for word in arguments if not CODE.fullmatch(word)]
    if wrong:
        print(
            f"{wrong[0]!r} is no code of a language; write it as fr or pt_BR",
            file=sys.stderr,
        )
        return 2
    FOLDER.mkdir(parents=True, exist_ok=True)
    texts, left = literals(), 0
    for language in sorted({*languages(), *arguments}):
        path = file_of(language)
        known = read(path) if path.exists() else {}
        write(path, language, texts, known)
        open_texts = [each for each in texts if not known.get(each)]
        left += len(open_texts)
        gone = len(set(known) - set(texts))
        print(f"{path.name}: {len(texts)} texts, {len(open_texts)} to translate, {gone} gone")
        for each in open_texts:
            print(f"  {texts[each]}: {each.context}: {each.text!r}")
        left += 0 if compile_file(path) else 1
    return int(left > 0)


def compile_file(path: Path) -> bool:
    """Make the file that the window loads; False, with a word about it, where no compiler is found."""
    tool = next((found for name in COMPILERS if (found := shutil.which(name))), None)
    if tool is None:
        print(f"not compiled: none of {', '.join(COMPILERS)} is installed", file=sys.stderr)
        return False
    subprocess.run([tool, "-silent", str(path), "-qm", str(path.with_suffix(".qm"))], check=True)
    return True


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
