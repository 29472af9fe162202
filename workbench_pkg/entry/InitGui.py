# The host executes this text when its window starts. Names defined here are not visible inside the class's
# methods, so they import what they need, and only when they need it.
import FreeCADGui


class HeartsideWorkbench(FreeCADGui.Workbench):
    MenuText = "Heartside"
    ToolTip = "How solid wood moves with the seasons, and how to build so that it stays flat"

    def __init__(self):
        import os

        import workbench_pkg

        folder = os.path.dirname(workbench_pkg.__file__)
        self.__class__.Icon = os.path.join(folder, "entry", "heartside.svg")

    def Initialize(self):
        from workbench_pkg.commands import registry

        registry.fill(self)

    def ContextMenu(self, recipient):
        from workbench_pkg.commands import registry

        registry.fill_context_menu(self, recipient)

    def GetClassName(self):
        return "Gui::PythonWorkbench"


def load_translations():
    import os

    import workbench_pkg

    folder = os.path.join(os.path.dirname(workbench_pkg.__file__), "resources", "translations")
    FreeCADGui.addLanguagePath(folder)
    if FreeCADGui.getLocale() not in (
        "English",
        "C",
    ):  # the host has chosen its language before it came to us
        FreeCADGui.updateLocale()


load_translations()
FreeCADGui.addWorkbench(HeartsideWorkbench())

from workbench_pkg.panels import stale  # noqa: E402
from workbench_pkg.views import watching  # noqa: E402

watching.watch()
stale.watch()
