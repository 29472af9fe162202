"""What runs inside the host for each command: ``carry_out(job)`` takes the job as plain data and returns the answer."""
