"""Species and materials: how much each moves, how stiff and strong it is, and where each figure comes from."""
