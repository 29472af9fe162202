"""Words that the core says as they stand in its data, so that no ``say`` with a literal names them."""

from __future__ import annotations

# table → column → what parts its texts; "" where a cell is one text
DATA_COLUMNS = {
    "finish_words": {"word": "", "note": ""},
    "year_presets": {"name": "", "basis": ""},
    "places": {"source": "", "locator": ""},
    "fastener_kinds": {"kind": "", "name": "", "unknown_links": ";", "note": ""},
}

DATA_WORDS = (
    # the code of the language itself, which a page carries
    "en",
    # months
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
    # cuts
    "flat", "rift", "quarter", "flat-sawn", "rift-sawn", "quarter-sawn",
    # kinds of joint
    "glued edge", "glued cross-grain", "glued end grain", "tenoned", "dovetailed", "lapped", "screwed", "hinged",
    "fixed at a point", "pegged", "housed free", "slides", "rests", "near", "overlap", "unknown",
    # what a part may leave unsaid
    "species", "grain", "rings", "moisture", "show", "fitted", "glued", "flattened",
    # how a joint is strained
    "pulled", "pressed", "sheared",
    # bars under and at the ends of a top, and what a plan of it is about
    "batten", "breadboard end", "driest day", "wettest day", "today",
    # how surely we know something
    "read", "recalled", "derived", "common practice", "own",
    # what makes most of the likely error
    "coefficient", "climate",
    # the humidity of a place, derived from a table of the moisture of wood outdoors
    "Table 13-1 (recalled): outdoor moisture",
    # columns of a logger
    "date", "time", "temperature", "humidity",
    # faces without a film
    "bare", "blocked", "wrapped",
    # figures of findings, without their units, as a comparison of two reports tells them
    "severity", "apart", "bow", "change driest", "change wettest", "corner lift driest", "corner lift wettest", "cover",
    "crushed", "cup", "depth", "diameter", "drawn", "drift", "edge least", "edge most", "face least", "face most",
    "force", "from middle", "gap", "grows", "growth", "height", "held at", "least", "least cover", "left", "most",
    "opens", "out of flat", "pith x", "pith y", "play", "relaxed", "room", "shrinkage", "slack", "solid width", "swing",
    "tension", "travels", "uneven cup", "volume", "width", "wished",
    # what the system says of a file
    "No such file or directory", "Permission denied", "No space left on device", "Is a directory", "Not a directory",
    "Read-only file system", "File name too long", "Too many levels of symbolic links", "File exists",
    # gravity of a finding
    "breaks", "jams", "seen",
    # how likely a split is
    "none", "unlikely", "possible", "likely",
)  # fmt: skip
