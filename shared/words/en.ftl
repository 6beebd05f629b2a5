### English. Each sentence stands here once; whoever changes a word of it touches this file alone.
### A figure in quotes, { "100 mm" }, is told in the reader's units. A comment above a message is for who translates it.

## Numbers, units and fields: what is said of what somebody typed. Each of them stands behind the label of its field

field-refused = { $label }: { $why }
number-plain = type a number in plain digits, like 240 or 1.5
number-too-small = too small to be meant; type 0 or a number one can measure
number-written-out = write the number out in plain digits, like 1500 or 0.001
number-one-mark = use one comma or one point, for the decimals only
number-spaces = type one number without spaces, like 1500
number-over-zero = a fraction cannot be over zero
unit-which = say which one: { $units }
  .oz = oz for weight, or US fl oz
  .fl-oz = US fl oz or imp fl oz
  .pt = US pt or imp pt
  .gal = US gal or imp gal
  .qt = US qt, or litres
unit-of-another = '{ $typed }' is a unit of { $other }, not of { $quantity }
unit-unknown = '{ $typed }' is not a unit known here
quantity-mass = mass
quantity-volume = volume
quantity-length = length
quantity-area = area
quantity-angle = angle
quantity-temperature = temperature
quantity-time = time
quantity-density = density
quantity-areal-weight = areal weight
quantity-weight-per-length = weight per length
quantity-speed = speed
quantity-flow = flow
quantity-equivalent-weight = equivalent weight
quantity-share = share
quantity-count = count
field-number = type a number
  .unit = type a number in { $unit }
field-whole = a whole number, please
# $high comes with its unit
field-within = from { $low } to { $high }
field-above = more than { $low } up to { $high }
# the units of "7 ft 10 in"
field-finer = after { $large } type { $small }, like 1 { $large } 4 { $small }
  .whole = whole { $large } first, then less than { $most }
field-parts = type the parts, like 100:30 or 2:1
  .count = type { $least } to { $most } numbers with a colon between them, like 100:30
  .one = '{ $typed }': { $why }
  .each = each number more than { $low } and at most { $high }
field-amount = type how much
  .unit = type how much in { $unit }
  .positive = more than zero, please
  .most = at most { $most }
field-choose = choose one of: { $options }
field-phone = type one number to dial, in digits, like +48 22 123 45 67
field-words = type a few words
field-letters = too long, at most { $most } characters
field-too-long = that is too long for any field here
field-no-such = there is no '{ $row }' here; choose one, or type its figures
  .thing = there is no such thing here; choose one, or type its figures
field-list = a list is expected here
field-rows =
  .most = at most { $most } of them
  .least = at least { $least } of them
field-clock = type a clock time, like 8:30 or 14:05
# the label of what is chosen beside an amount
field-of-what = { $label }, of what
# how a number was read that could be read in two ways
field-read =
  .comma = { $read } (a comma marks the decimals; for thousands type { $whole })
  .point = { $read } (a point marks the decimals; for thousands type { $whole })

## Door: cards, links and what leaves the phone

card-of-row = { $each } { $count }, { $field }

## Spreader

spreader-radii = Radius of each spreader
  .help = Several with a colon between them.
spreader-paper = Paper
spreader-too-many = These do not fit on one sheet: fewer at a time, and none above { $largest }. A larger cove is drawn with a bent batten
spreader-measure = First measure the bar
  .text = It must be { "100 mm" } long on the paper. If it is not, print again at 100%, without fitting to the page.
spreader-radius = Spreader, radius
  .rough = a round tip { $width } wide
spreader-cut = Then
  .text = Glue it to a stiff sheet, cut outside the line, sand to the line, round no corner of the tip. Try it at the sharpest and the flattest place before mixing.
spreader-sheet = Spreaders at true size
  .bar = measure me: { "100 mm" }
  .print = Print at 100 %. Cut to the line.
  .radius = R { $radius }
  .told = A sheet to print at true size: a bar of { "100 mm" } to measure, and a template with a round tip of radius { $radii }.

## Kit

kit-as-built-in = As built in
  .text = Not measured by anybody: { $fields }


## Door: the moves by name

# a label, as a page names its part; what it makes of what: "A mix to what the scale must show"
move-ratio = Ratio
  .purpose = A label and one known amount to every part, by weight and by volume
move-measure = Measure
  .purpose = A mix to what the scale must show or how many strokes to pump
move-rescue = Rescue
  .purpose = What is really in the cup to what has to be added
move-thicken = Thicken
  .purpose = A mix and a stiffness to the filler, and the putty it makes
move-pouring = Pour along
  .purpose = A batch to its steps, each corrected by what was really poured before it
move-heat = Heat
  .purpose = A batch in its container to its usable minutes, and how hot it gets
move-trial = Test cup
  .purpose = A small cup and a thermometer to the rate and the loss of heat of a system
move-cure = Cure
  .purpose = A system and the coming temperatures to when it may be peeled, coated, sanded, loaded
move-dew = Dew point
  .purpose = Air and surface to the margin above the dew point, now and through the night
move-joint = Joint
  .purpose = Two panels and an angle to the cove, the other face, the tape and the resin of one seam
move-spreader = Spreader
  .purpose = A cove radius to a template at true size
move-boat = Boat
  .purpose = All joints to what is bought, what is cut and what it adds to the hull
move-plan = Plan
  .purpose = The seams of a day to batches that these hands can lay in time
move-pot = Pot
  .purpose = A running pot to the minutes left, the next step and the alarm
move-timer = Timer
  .purpose = A step that is done for a time to what is left of it
move-kit = Kit
  .purpose = One thing of the kit to what is kept of it
move-log = Log
  .purpose = A poured batch to one line of the log
move-timings = Timings
  .purpose = Own working times against the label's
move-own-rates = Own rates
  .purpose = Laid batches to how fast these hands are
move-aid = First aid
  .purpose = What to do at once, in its order, and a pot that smokes
move-calls = Emergency numbers
  .purpose = Own emergency numbers to what can be dialled
move-safety = Safety
  .purpose = The cautions that always stand
move-air = Air
  .purpose = A room, a fan and a solvent to minutes, limits and the flow that is needed
move-sources = Sources
  .purpose = Every figure and statement kept here, with where it comes from


## Kinds of things, and the kit


## Log and rates


## Ratio: label, parts, doubt, error


## Fillers and doses


## Measure: what the tool must show


## Scale


## Pumps


## Marks on a cup


## Stick


## Tools side by side


## Thicken


## Rescue


## Pour step by step


## Time in the cup


## Heat: usable time and peak


## Sun


## Test cup


## Cure

# what the label says of curing
label-cure-fold = Cure times from the label
label-cure-recoat = Recoat without sanding, from
label-cure-until = Recoat without sanding, until
  .early = Recoat until: it must be later than the time from which it may be
label-cure-peel = Peel ply off after
label-cure-handle = Handle after
label-cure-sand = Sand after
label-cure-full = Full strength after
label-cure-temperature = all at a temperature of
  .missing = Cure times: at which temperature? The label says it, often { "20 degC" }
label-cure-nothing = Hardener speed: choose it, or type the label's cure times
# the lowest working temperature of a hardener, and how it is known
lowest-known-by = { $temperature } ({ $mark })
  .slow = a slow hardener's, from memory; type the label's


## Dew point


## Running pot, timer and the phone's clocks


## Clock times

clock-fold = Clock and pauses
clock-hours = Clock
  .whole = 24 h
  .half = am / pm
# a time on a clock of 12 h: "2:00"
clock-am = { $time } am
clock-pm = { $time } pm
# a time that is not of the first day
clock-next-day = { $time } next day
clock-day-before = { $time } the day before
clock-on-day = { $time } on day { $day }


## Plan


## Joint


## Boat


## Cutting


## Drawings


## Safety: cautions and what is said of each task


## First aid and hazard statements


## Air and dust


## Catalogue: tables and what their rows are called


## Sources

# where a figure comes from: the six marks
mark-published = published
mark-common-practice = common practice
mark-from-memory = from memory
mark-own-judgement = own judgement
mark-from-label = from the label
mark-own-figure = your own figure
mark-with-source = { $mark }: { $source }


## Pages: what templates say
page-about = The mixing maths of an epoxy seam, and the work around it, without a signal.
page-skip = To the answer
page-safety = Safety
page-caution = Caution
page-screens = Screens
page-work-it-out = Work it out
boat-page =
  .print = Print this list
  .use-rolls = Cut from the kit's rolls
  .cut-rolls = All is cut: shorten the kit's rolls
  .demo = Try the demo boat
  .empty = Take all joints out
clock-page =
  .pots = Running pots
  .try-alarm = Try the alarm
  .aloud = Say it aloud
  .awake = Keep the screen on
amount-of-what = of what
pick-yours = Your own
pick-as-typed = As typed in its figures
pick-built-in = Built in, typical figures
pick-keep = Keep it in the kit
select-unsaid = as it comes
editor-leave = Leave it
editor-keep = Keep it
row-up = Up
row-down = Down
row-remove = Remove
kit-page =
  .none = Nothing of your own yet. Until you add some, every screen uses typical figures, some from memory.
  .add = Add
  .unread = Kept, but not to be read here
  .log = Poured batches: the log
  .phone = This phone
  .no-scripts = Your own things are kept on the phone, which needs scripts for it. What a thing would say can be tried here.
setting-hand = Keys for the
setting-hand-right = Right hand
setting-hand-left = Left hand
setting-light = Light
setting-light-as-phone = As the phone
setting-light-sun = Bright sun
setting-light-dark = Dark shed
setting-voice = Step by step, the phone reads
  .none = This phone has no English voice of its own, so nothing is read aloud: it shows, and it beeps.
setting-voice-asked = When asked
setting-voice-each = Each step
setting-units = Units
  .help = For every screen. What you typed before keeps its unit until you change it.
backup-copy = A copy of everything
backup-save = Save kit and log to a file
backup-bring-back = Bring back from a file
backup-leave = Leave as it is
backup-add = Add to mine
backup-replace = Replace all
backup-brought = Brought back from files, the newest first. What was changed since stays.
backup-undo = Undo the newest
page-correct = Correct the marked fields to see the figures.
log-page =
  .search = Search the log
  .add = Add a batch
  .none = Nothing is poured yet. A batch that you log at the pour is listed here, with its numbers.
  .not-found = No batch has all of these words.
  .more = Show more
  .table = Save as a table (CSV)
  .everything = Save everything: in Kit
  .no-scripts = The log is kept on the phone, which needs scripts for it.
  .when = When
plan-page =
  .take-boat = Take the boat’s seams
  .own-rates = Use my rates from the log
  .print = Print the plan and a card for each batch
pour-page =
  .along = Pour it step by step
  .keep = Keep this pour
  .cup = The cup, to scale
  .parts = Every part, and more figures
safety-page =
  .first-aid = First aid
  .sources = Where every figure comes from
share-share = Share
page-old = Old figures: working it out
share-hand-over = Hand over
share-carries = The code carries
share-carries-link = The link
share-carries-words = Plain words
share-carries-help = Plain words are for a phone that has no signal and no Covemix.
share-link = Link
share-send = Send
share-copy-link = Copy link
share-copy-words = Copy as words
share-print = Print a card
share-paste = Paste a link you were given
share-scan-elsewhere = This browser reads no codes: use the phone's own camera, and paste the link it shows.
share-look = Look at it
share-scan = Scan a code
share-close = Close
share-words-label = The plain words
card-blank =
  .when = Date and time
  .temperature = Shed temperature
  .lots = Lot numbers
  .seam = Seam
  .who = Poured by
  .outcome = How it turned out
spreader-page =
  .print = Print at 100%
steps-name = Step by step
steps-tub-before = Filler tub before
steps-tub-after = Filler tub after
steps-came-out = How stiff it came out
steps-keep-batch = Keep this batch
steps-rescue = Rescue it
steps-undo = Undo
steps-say = Say it
steps-leave = Leave
trial-page =
  .more = How it goes, more figures
joint-page =
  .more = Joint: more figures
field-understood = understood as { $read }
pick-own = { $name } ({ $whence })
record-figures = { $label }: its figures
record-mark = These figures are { $mark }. Type your own over them.
row-add = { $each }: one more
row-name = { $each } { $count }
fold-more = { $label }: more figures
backup-would = { $button } would change:
steps-otherwise = { "" }, if it came out otherwise
page-pour = Pour
page-joint = Joint
page-boat = Boat
page-spreader = Spreader
page-clock = Clock
page-trial = Test cup
page-plan = Plan
page-kit = Kit
page-log = Log
page-sources = Sources
sources-page =
  .all = Show all { $count }
