"""The Shoots page, planning, the run sheet, the log and the variances."""
