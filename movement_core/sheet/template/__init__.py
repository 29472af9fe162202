"""A drilling template: the fasteners of a plan at full size, on as many sheets of paper as it takes."""
