# The host executes this text when its window starts. Names defined here are not visible inside the class's
# methods, so they import what they need, and only when they need it.
import os

import FreeCADGui

import workbench_pkg


class HeartsideWorkbench(FreeCADGui.Workbench):
    MenuText = "Heartside"

    def __init__(self):
        import os

        import FreeCAD

        import workbench_pkg

        folder = os.path.dirname(workbench_pkg.__file__)
        self.__class__.ToolTip = FreeCAD.Qt.translate(
            "Heartside", "How solid wood moves with the seasons, and how to build so that it stays flat"
        )
        self.__class__.Icon = os.path.join(folder, "entry", "heartside.svg")

    def Initialize(self):
        from workbench_pkg.commands import registry

        registry.fill(self)

    def ContextMenu(self, recipient):
        from workbench_pkg.commands import registry

        registry.fill_context_menu(self, recipient)

    def GetClassName(self):
        return "Gui::PythonWorkbench"


class HeartsidePreferences:
    """The page is made when the host opens its preferences, not at start."""

    def __init__(self, *_):
        from workbench_pkg.panels.preferences_page import PreferencesPage

        self.page = PreferencesPage()
        self.form = self.page.form
        self.loadSettings, self.saveSettings = self.page.loadSettings, self.page.saveSettings


_resources = os.path.join(os.path.dirname(workbench_pkg.__file__), "resources")
FreeCADGui.addLanguagePath(os.path.join(_resources, "translations"))
if FreeCADGui.getLocale() not in ("English", "C"):  # the host has chosen its language before it came to us
    FreeCADGui.updateLocale()
FreeCADGui.addIconPath(os.path.join(_resources, "icons"))
FreeCADGui.addPreferencePage(HeartsidePreferences, "Heartside")
FreeCADGui.addWorkbench(HeartsideWorkbench())

from workbench_pkg.panels import stale  # noqa: E402
from workbench_pkg.views import watching  # noqa: E402

watching.watch()
stale.watch()
