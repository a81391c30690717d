<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
<name>barkeep</name>
<message>
<source>Another window or a command has removed {what} since you began, so nothing was written. Undo may bring it back.</source>
<translation type="unfinished" />
</message>
<message>
<source>Apr</source>
<translation type="unfinished" />
</message>
<message>
<source>April</source>
<translation type="unfinished" />
</message>
<message>
<source>Aug</source>
<translation type="unfinished" />
</message>
<message>
<source>August</source>
<translation type="unfinished" />
</message>
<message>
<source>Cannot {what} “{label}”: {reason}. Nothing was changed.</source>
<translation type="unfinished" />
</message>
<message>
<source>Dec</source>
<translation type="unfinished" />
</message>
<message>
<source>December</source>
<translation type="unfinished" />
</message>
<message>
<source>Feb</source>
<translation type="unfinished" />
</message>
<message>
<source>February</source>
<translation type="unfinished" />
</message>
<message>
<source>Friday</source>
<translation type="unfinished" />
</message>
<message>
<source>How much a weight of {bottle} leaves cannot be worked out: {because}. Weigh a bottle of it once full and once empty, or count it in another way.</source>
<translation type="unfinished" />
</message>
<message>
<source>Jan</source>
<translation type="unfinished" />
</message>
<message>
<source>January</source>
<translation type="unfinished" />
</message>
<message>
<source>Jul</source>
<translation type="unfinished" />
</message>
<message>
<source>July</source>
<translation type="unfinished" />
</message>
<message>
<source>Jun</source>
<translation type="unfinished" />
</message>
<message>
<source>June</source>
<translation type="unfinished" />
</message>
<message>
<source>Mar</source>
<translation type="unfinished" />
</message>
<message>
<source>March</source>
<translation type="unfinished" />
</message>
<message>
<source>May</source>
<translation type="unfinished" />
</message>
<message>
<source>Monday</source>
<translation type="unfinished" />
</message>
<message>
<source>No backup of {file} could be made: {reason} What you did is written all the same.</source>
<translation type="unfinished" />
</message>
<message>
<source>Nov</source>
<translation type="unfinished" />
</message>
<message>
<source>November</source>
<translation type="unfinished" />
</message>
<message>
<source>Oct</source>
<translation type="unfinished" />
</message>
<message>
<source>October</source>
<translation type="unfinished" />
</message>
<message>
<source>Saturday</source>
<translation type="unfinished" />
</message>
<message>
<source>Sep</source>
<translation type="unfinished" />
</message>
<message>
<source>September</source>
<translation type="unfinished" />
</message>
<message>
<source>Sunday</source>
<translation type="unfinished" />
</message>
<message>
<source>The connection to {file} was lost just as the change was being written, so it may be written or not. Look whether it is there before you do it again.</source>
<translation type="unfinished" />
</message>
<message>
<source>The connection to {file} was lost, and nothing was changed. Try again in a moment; barkeep connects again by itself.</source>
<translation type="unfinished" />
</message>
<message>
<source>The help says nothing of “{asked}”. Its pages: barkeep help.</source>
<translation type="unfinished" />
</message>
<message>
<source>The printer takes nothing. Is it switched on, and is its queue open?</source>
<translation type="unfinished" />
</message>
<message>
<source>The spec of {drink} was removed, so what {theme} poured of it is not known: undo that, put its serves at 0, or take it out of the shoot.</source>
<translation type="unfinished" />
</message>
<message>
<source>There is already an ingredient of yours called “{name}”; “barkeep ingredient change” changes {ingredient}.</source>
<translation type="unfinished" />
</message>
<message>
<source>There is no bottle to export.</source>
<translation type="unfinished" />
</message>
<message>
<source>There is no recipe for {ingredient}: say what it is made from.</source>
<translation type="unfinished" />
</message>
<message>
<source>There is no spec of your own to export; name a classic, or ask for all of them.</source>
<translation type="unfinished" />
</message>
<message>
<source>There is nothing to {what}.</source>
<translation type="unfinished" />
</message>
<message>
<source>Thursday</source>
<translation type="unfinished" />
</message>
<message>
<source>Tuesday</source>
<translation type="unfinished" />
</message>
<message>
<source>Wednesday</source>
<translation type="unfinished" />
</message>
<message>
<source>What was asked is done, but the answer could not be printed: {reason}.</source>
<translation type="unfinished" />
</message>
<message>
<source>What you did is written, but {file} {why} just now, so it does not show yet. Read it again in a moment.</source>
<translation type="unfinished" />
</message>
<message>
<source>What {bottle} weighs without its contents is not known yet: weigh it once full or once empty first.</source>
<translation type="unfinished" />
</message>
<message>
<source>and</source>
<translation type="unfinished" />
</message>
<message>
<source>bottle</source>
<translation type="unfinished" />
</message>
<message>
<source>bottle carries</source>
<translation type="unfinished" />
</message>
<message>
<source>bottles</source>
<translation type="unfinished" />
</message>
<message>
<source>bottles carry</source>
<translation type="unfinished" />
</message>
<message>
<source>count</source>
<translation type="unfinished" />
</message>
<message>
<source>counts</source>
<translation type="unfinished" />
</message>
<message>
<source>day</source>
<translation type="unfinished" />
</message>
<message>
<source>days</source>
<translation type="unfinished" />
</message>
<message>
<source>drink</source>
<translation type="unfinished" />
</message>
<message>
<source>drinks</source>
<translation type="unfinished" />
</message>
<message>
<source>file</source>
<translation type="unfinished" />
</message>
<message>
<source>files</source>
<translation type="unfinished" />
</message>
<message>
<source>filter</source>
<translation type="unfinished" />
</message>
<message>
<source>filters</source>
<translation type="unfinished" />
</message>
<message>
<source>glass</source>
<translation type="unfinished" />
</message>
<message>
<source>glasses</source>
<translation type="unfinished" />
</message>
<message>
<source>line</source>
<translation type="unfinished" />
</message>
<message>
<source>lines</source>
<translation type="unfinished" />
</message>
<message>
<source>more drink</source>
<translation type="unfinished" />
</message>
<message>
<source>more drinks</source>
<translation type="unfinished" />
</message>
<message>
<source>neighbour</source>
<translation type="unfinished" />
</message>
<message>
<source>neighbours</source>
<translation type="unfinished" />
</message>
<message>
<source>new product</source>
<translation type="unfinished" />
</message>
<message>
<source>new products</source>
<translation type="unfinished" />
</message>
<message>
<source>note on the bottles</source>
<translation type="unfinished" />
</message>
<message>
<source>notes on the bottles</source>
<translation type="unfinished" />
</message>
<message>
<source>nothing is {verb} yet. --yes puts what stands right in the place of what is there:
{rows}</source>
<translation type="unfinished" />
</message>
<message>
<source>open bottle</source>
<translation type="unfinished" />
</message>
<message>
<source>open bottles</source>
<translation type="unfinished" />
</message>
<message>
<source>or</source>
<translation type="unfinished" />
</message>
<message>
<source>other</source>
<translation type="unfinished" />
</message>
<message>
<source>others</source>
<translation type="unfinished" />
</message>
<message>
<source>package</source>
<translation type="unfinished" />
</message>
<message>
<source>packages</source>
<translation type="unfinished" />
</message>
<message>
<source>pair turns a drink</source>
<translation type="unfinished" />
</message>
<message>
<source>pairs turn drinks</source>
<translation type="unfinished" />
</message>
<message>
<source>purchase</source>
<translation type="unfinished" />
</message>
<message>
<source>purchases</source>
<translation type="unfinished" />
</message>
<message>
<source>round</source>
<translation type="unfinished" />
</message>
<message>
<source>rounds</source>
<translation type="unfinished" />
</message>
<message>
<source>row</source>
<translation type="unfinished" />
</message>
<message>
<source>rows</source>
<translation type="unfinished" />
</message>
<message>
<source>serve</source>
<translation type="unfinished" />
</message>
<message>
<source>serves</source>
<translation type="unfinished" />
</message>
<message>
<source>spec</source>
<translation type="unfinished" />
</message>
<message>
<source>specs</source>
<translation type="unfinished" />
</message>
<message>
<source>step</source>
<translation type="unfinished" />
</message>
<message>
<source>steps</source>
<translation type="unfinished" />
</message>
<message>
<source>test</source>
<translation type="unfinished" />
</message>
<message>
<source>tests</source>
<translation type="unfinished" />
</message>
<message>
<source>thing</source>
<translation type="unfinished" />
</message>
<message>
<source>thing goes</source>
<translation type="unfinished" />
</message>
<message>
<source>things</source>
<translation type="unfinished" />
</message>
<message>
<source>things go</source>
<translation type="unfinished" />
</message>
<message>
<source>{amount:g} {unit} cannot be taken from {bottle}: the ledger says {left:g} {unit} is left. Count it first.</source>
<translation type="unfinished" />
</message>
<message>
<source>{amount:g} {unit} cannot have been spilled of {bottle}: {left:g} {unit} of it is left after what was poured. Write {left:g} {unit} if all of that was spilled.</source>
<translation type="unfinished" />
</message>
<message>
<source>{bottle} is {state} already: {advice}.</source>
<translation type="unfinished" />
</message>
<message>
<source>{day} {month}</source>
<translation type="unfinished" />
</message>
<message>
<source>{day} {month} {year}</source>
<translation type="unfinished" />
</message>
<message>
<source>{day} {short_month}</source>
<translation type="unfinished" />
</message>
<message>
<source>{day} {short_month} {year}</source>
<translation type="unfinished" />
</message>
<message>
<source>{field} cannot be “{value}”: {expected}.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} cannot be reached just now, and nothing was changed.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} cannot be used just now: {reason}. Nothing was changed.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} cannot be used yet: {why} Its columns are {seen}. Say {columns}.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} cannot be written: {reason}. Nothing was changed.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} could not be opened: it is in use by another program, which has not finished within {waited_s:g} s. Nothing of it was lost; open it again when the other program has finished or is closed.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} is in use by another program just now, and nothing was changed. Try again in a moment.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} is on a server and in no file: what that needs is done there, by pg_dump and pg_restore. “Export everything” and a backup are files that barkeep takes back.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} is read-only: it can be looked at, and nothing in it can be changed.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} was deleted, moved or replaced while it was open here, and nothing was changed. What is shown was read before that.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file} was written by a newer barkeep (schema {found}; this one knows {known}). It has not been touched; update barkeep to open it.</source>
<translation type="unfinished" />
</message>
<message>
<source>{file}, {key}: {reason}</source>
<translation type="unfinished" />
</message>
<message>
<source>{here} here, {there} on line {line}, for the same product.</source>
<translation type="unfinished" />
</message>
<message>
<source>{level:g} {unit} is more than {bottle} holds ({size:g} {unit}).</source>
<translation type="unfinished" />
</message>
<message>
<source>{offered} must never stand in for {wanted}: {why}</source>
<translation type="unfinished" />
</message>
<message>
<source>{spec} cannot be batched: {reason}.</source>
<translation type="unfinished" />
</message>
<message>
<source>{spec} takes no rounds through a tin: {reason}.</source>
<translation type="unfinished" />
</message>
<message>
<source>{theme} is on {on}, which is still to come, so it cannot be filmed yet; nothing is changed. Where it was filmed earlier, give it that day first.</source>
<translation type="unfinished" />
</message>
<message>
<source>{theme} is on {on}, which is still to come; there is nothing to log.</source>
<translation type="unfinished" />
</message>
<message>
<source>{theme} was logged on {at:%Y-%m-%d at %H:%M} already; nothing is written. Undo that log first, or count the bottles by themselves.</source>
<translation type="unfinished" />
</message>
<message>
<source>{weight_g:.5g} g is less than {bottle} weighs empty ({tare_g:.4g} g). Is it on the scale, without its cap?</source>
<translation type="unfinished" />
</message>
<message>
<source>{weight_g:.5g} g is more than {bottle} weighs when it is full (about {full_g:.4g} g).</source>
<translation type="unfinished" />
</message>
<message>
<source>{what} cannot be used: {reason}.</source>
<translation type="unfinished" />
</message>
<message>
<source>{what} was stopped; nothing was written.</source>
<translation type="unfinished" />
</message>
<message>
<source>{why} Filmed today? Say {same} with --on {today}.</source>
<translation type="unfinished" />
</message>
<message>
<source>{why} Filmed today? Then first: barkeep shoot plan "#{shoot_id}" --state filmed --on {today}</source>
<translation type="unfinished" />
</message>
<message>
<source>{why} Say with --made what was made, or --what-there-is to pour that much.</source>
<translation type="unfinished" />
</message>
<message>
<source>{words} Nothing is written until you go back to the bar as it is.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{name}” is understood as {as_} already.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{term}” finds nothing: {expected}.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{text}” cannot be read as an amount: {expected}.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{text}” does not say which column is what: {reason}.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{text}” holds bytes that are no text (UTF-8); write it anew.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{text}” is below nothing; an amount is zero or more.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{text}” is {given}; {wanted} is expected here.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{text}” of {name} is about {likely} pieces; write how many there are.</source>
<translation type="unfinished" />
</message>
<message>
<source>“{value}” for {field} is not clear: {expected}.</source>
<translation type="unfinished" />
</message>
</context>
</TS>
