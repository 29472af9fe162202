# The host executes this text at every start, with and without a window: no __file__, no package around it.
# It must cost nothing, so it only registers; everything else is imported at first use.
import FreeCAD

from workbench_pkg.objects import restoring

restoring.watch()
FreeCAD.__unit_test__ = [*getattr(FreeCAD, "__unit_test__", []), "workbench_pkg.host_tests"]
