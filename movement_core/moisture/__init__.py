"""How moisture goes into and out of wood through its thickness, over hours, seasons and years."""
