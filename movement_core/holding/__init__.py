"""What holding a panel flat takes: the plate on its frame, fasteners, battens, and the attachment plan."""
