<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en">
<context>
<name>barkeep</name>
<message>
<source>{day} {month}</source>
<translation>{month} {day}</translation>
</message>
<message>
<source>{day} {month} {year}</source>
<translation>{month} {day}, {year}</translation>
</message>
<message>
<source>{day} {short_month}</source>
<translation>{short_month} {day}</translation>
</message>
<message>
<source>{day} {short_month} {year}</source>
<translation>{short_month} {day}, {year}</translation>
</message>
</context>
</TS>
