"""The list of woods and materials with a search line above it and what is known of the chosen one below."""

from __future__ import annotations

import FreeCAD as App

from movement_core.errors import HeartsideError
from movement_core.names import words
from movement_core.wood import Species, all_species, find_species
from workbench_pkg.host.qt import QtCore, QtWidgets
from workbench_pkg.panels import rows
from workbench_pkg.panels.fields import KEEP, MIXED

translate = App.Qt.translate


class SpeciesField:
    """Search, choose, read up. A name that is written out and unique need not be chosen from the list."""

    def __init__(self) -> None:
        self.widget = QtWidgets.QWidget()
        column = QtWidgets.QVBoxLayout(self.widget)
        column.setContentsMargins(0, 0, 0, 0)
        self.search = QtWidgets.QLineEdit()
        self.search.setObjectName("HeartsideSpeciesSearch")
        self.search.setClearButtonEnabled(True)
        self.search.setPlaceholderText(translate("Heartside", "Search: oak, walnut, Fagus, plywood …"))
        self.list = QtWidgets.QListWidget()
        self.list.setObjectName("HeartsideSpeciesList")
        self.list.setMinimumHeight(90)
        self.list.setMaximumHeight(125)
        self.about = QtWidgets.QLabel()
        self.about.setObjectName("HeartsideSpeciesAbout")
        self.about.setWordWrap(True)
        self.about.setTextInteractionFlags(QtCore.Qt.TextSelectableByMouse)
        for part in (self.search, self.list, self.about):
            column.addWidget(part)
        self.first: object = None
        self.woods = all_species()  # one a row
        self.known = [_searchable(species) for species in self.woods]
        for species in self.woods:
            names = ", ".join(name for name in (species.botanical, *species.trade_names) if name)
            rows.append(self.list, species.name, tip=names)
        self.search.textChanged.connect(self._filter)
        self.list.currentRowChanged.connect(self._tell)
        self.show(None)

    def show(self, value: object) -> None:
        self.first = value
        self.search.clear()
        self.list.setCurrentRow(-1)
        if isinstance(value, str):
            self.set(value)
        self._tell()

    def set(self, name: str) -> None:
        """Choose a row of the list by its name; a name that is not in it stands in the search line."""
        wanted = _settled(name)
        for row, species in enumerate(self.woods):
            if species.name == wanted:
                self.list.setRowHidden(row, False)
                self.list.setCurrentRow(row)
                where = self.list.model().index(row, 0)
                self.list.scrollTo(where, QtWidgets.QAbstractItemView.PositionAtCenter)
                return
        self.search.setText(name)

    def answer(self) -> object:
        """KEEP or a name. Raises UnknownName for a search that is no name and chose nothing."""
        chosen = self._chosen()
        if chosen is not None:
            return KEEP if chosen.name == _settled(self.first) else chosen.name
        text = self.search.text().strip()
        if not text:
            return KEEP
        name = find_species(text).name
        return KEEP if name == _settled(self.first) else name

    def chosen_name(self) -> object:
        """KEEP, or the name of the row that is chosen in place of what was said."""
        chosen = self._chosen()
        return KEEP if chosen is None or chosen.name == _settled(self.first) else chosen.name

    def _chosen(self) -> Species | None:
        row = self.list.currentRow()
        return None if row < 0 or self.list.isRowHidden(row) else self.woods[row]

    def _filter(self, text: str) -> None:
        wanted = words(text)
        for row, known in enumerate(self.known):
            fits = all(any(word.startswith(part) for word in known) for part in wanted)
            self.list.setRowHidden(row, not fits)
        if self._chosen() is None:
            self.list.setCurrentRow(-1)
        self._tell()

    def _tell(self, *_: object) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self.about.setText(about(chosen))
            return
        text = self.search.text().strip()
        shown = sum(not self.list.isRowHidden(row) for row in range(self.list.count()))
        if text and not shown:
            try:
                self.about.setText(about(find_species(text)))
            except HeartsideError as error:
                self.about.setText(str(error))
        elif self.first is MIXED:
            self.about.setText(
                translate("Heartside", "The selected parts are of different woods; they stay so.")
            )
        else:
            self.about.setText(translate("Heartside", "{count} woods and materials").format(count=shown))


def _settled(name: object) -> object:
    """The name that the table gives to what was said; what it does not know stays as it is."""
    try:
        return find_species(name).name if isinstance(name, str) else name
    except HeartsideError:
        return name


def about(species: Species) -> str:
    """Coefficients and their source, in two or three lines."""
    name = f"<b>{species.name}</b>"
    if species.botanical:
        name += f" <i>{species.botanical}</i>"
    if species.kind == "inert":
        figures = translate("Heartside", "Moisture does not move it.")
    elif species.kind == "sheet":
        figures = translate("Heartside", "In the plane {radial:.3f} % for each 1 % of moisture.").format(
            radial=100 * species.radial_coefficient
        )
    else:
        figures = translate(
            "Heartside", "Radial {radial:.3f} %, tangential {tangential:.3f} % for each 1 % of moisture."
        ).format(radial=100 * species.radial_coefficient, tangential=100 * species.tangential_coefficient)
    source = species.sources.get("tangential_coefficient") or species.sources.get("radial_coefficient")
    return "<br>".join([name, figures, *([f"<small>{source}</small>"] if source else [])])


def _searchable(species: Species) -> tuple[str, ...]:
    names = " ".join((species.name, species.botanical, *species.trade_names))
    return tuple(sorted(set(words(names))))
