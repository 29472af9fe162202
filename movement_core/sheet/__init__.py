"""Findings and figures as text, JSON and CSV."""
