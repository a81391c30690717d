"""The Shoots page, planning, the sheet on camera, the log and the variances."""
