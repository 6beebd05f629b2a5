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

# a table and its rows, as a builder would look them up: "Cup and stick: Cup filled at most, of its height"
facts-ratio-error = Ratio error, of the hardener
  .aim = Good up to
  .stop = Too much from
facts-ratio-cost = What a wrong ratio costs
  .lost-per-percent = Glass temperature lost for each percent of hardener too little or too much
  .lost-at-most = Glass temperature lost at what is still good and at what is too much, at most
  .told-evenly = Told as one for each percent, up to
facts-odd-label = Ratio of a label that is asked back
  .wrong-way = More hardener than resin, from
  .far-off = Ratio off that of the equivalent weights, from
  .lightest = Density of a part to the first, where two ratios give it, least
  .heaviest = Density of a part to the first, where two ratios give it, most
facts-part-density = Density of a part, where only a remembered one is known
  .resin = Resin
  .hardener = Hardener
  .same-mark = Two fills of one syringe to one mark differ by, at most
facts-ratio-doubt = Doubt of a ratio by weight that only densities give, k = 2
  .aim = Nothing said up to, shown from
  .stop = No reading of a scale from
facts-stirring = Stirring, how long to mix
  .stir-short = A small batch
  .stir-long = A large batch, or a cold one
  .small = A batch is small up to
  .cold = A mix is cold below
  .densest = Density where none is known, to be safe
facts-stick = Cup and stick
  .mark-error = How far a mark on a stick may be off
  .tallest = Cup too tall to stir in, height to width
  .room = Cup filled at most, of its height
facts-pumps = Pumps and scales
  .furthest = Batch may grow to come into ratio, at most
  .alike = Steps of a scale that are as near, of a step
  .stroke-deviation = One pump stroke to the next, standard deviation
facts-damp = Damp, dew and blush
  .margin = Surface above the dew point, margin at the least
  .damp = Relative humidity of the air that is too damp, above
  .sky = What the open night sky cools a surface below the air
  .meter-off = How far a hygrometer may move the dew point
facts-angle = Angle of a joint
  .narrowest = Too narrow a corner below
  .flattest = Bulkhead too flat on its panel below
  .flat-from = Flat tape alone, no cove, from
facts-outer-edge = Outer edge, rounded over
  .thin-cover = Too thin a cover left below, of the panel
facts-tape-pieces = Tape cut in pieces
  .most-tapes = Most pieces of one layer
facts-hot-pot = Pot that gets hot
  .most-peak = Hottest that is given as a figure
  .hardly-above = Hardly above the air, within
  .deepest-cup = Depth of a cup to its width, asked back above
facts-pot-clock = Clock of a running pot
  .soon = Last minutes from
  .again = Looked at again after it was still good
  .on-way = Link from the other phone, on its way
  .long-ago = Over for so long that the pot is asked back
  .away = Page out of sight before its clock is in doubt
  .clocks-apart = Two clocks of one phone apart
facts-timings-apart = Pot life, timings that do not agree
  .times-apart = Label's times apart from which they are asked back
  .shallower = What a bag bears of a cup that was gone
  .roughly = Stiffening later than another pot was stiffening
  .own-doubt = Doubt of an own timing
  .label-doubt = Doubt of the label's pot life
  .film-doubt = Doubt of the label's film time
facts-container-size = Size of a container that nobody measured
  .small-cup = Cup, as wide with little in it
  .bag-width = Bag, thickness when full
  .tray-length = Tray, length
  .tray-width = Tray, width
  .radius = Cove, radius
  .panel = Panel thickness
  .tape-width = Tape width
  .film = Film thickness
facts-test-cup = Test cup
  .mass = Mix in a test cup
  .least-mass = Mix in a test cup, least
  .most-mass = Mix in a test cup, most
  .reading = Kitchen thermometer off by
  .lag = Kitchen thermometer late by
  .minute = Typed minute off by
  .moment = Moment seen by eye off by
  .off-model = One temperature for a cup off by, of the rise
  .off-time = One temperature for a cup off by, of the time
  .off-end = Test cup's time off by, at least
  .stringy = Pulls strings once cured
  .stringy-spread = Pulls strings, off by
  .loss-spread = Loss of heat off by
  .heat-spread = Heat of the mix off by
  .strange = Test cup's reading asked back, deviations
  .unsure = Test cup too unsure to be kept
  .not-told = Test cup tells no loss from a doubt of
  .swings = Test cup that cooled and warmed again by
  .up-to = Mass that a test cup's high loss is believed up to
  .another = Air of another test cup
  .ninety = Nine times in ten, deviations
facts-plan-most = Plan, where it gives up
  .most-pieces = Most pieces of a day
  .most-work = Most pieces once the long ones are cut
  .most-parts = Most parts of one piece
  .most-batches = Most batches of a day
  .most-told = Most batches shown step by step
facts-plan-odd = Plan, what is asked back
  .long-day = A long day, hours of work
  .points-gap = Hours between two temperatures
  .before = Looked at before its start, nothing late yet
facts-plan-help = Plan, what might help
  .cooler = Move to the shade, cooler by
  .earlier = Start earlier by
  .slower = A slower hardener, working times
facts-boat-most = Boat, most that one list takes
  .most-cut = Pieces of tape and peel ply
  .most-faces = Faces to work on
  .most-angles = Angles along all seams
  .most-rolls = Rolls of one kind
  .widest-packs = Largest pack, of the smallest
  .warmth = Temperature counted with where none is typed
facts-filler-parts = Filler, how it goes in
  .first-parts = Share that is stirred in first
facts-start = Where a form starts
  .batch = Batch
  .scoop = Level scoop
  .seam = Seam length
  .boat-seam = Seam length in a boat's list
  .radius-small = Radius of a small spreader
  .radius-middling = Radius of a middling spreader
  .radius-large = Radius of a large spreader
  .packs = Packs of resin
  .pause = Pause between two batches
  .opening = Opening for the other way of the air
  .mixing-factor = Mixing factor of the room
  .cleared = Share of the air to clear
  .air = Air temperature of the room
facts-sun = Sun on the level, W/m2, least and most
facts-looks = Share of the sun that a surface takes up, least and most
facts-cover = Cover: sun that passes, heat given off
facts-sun-on-pot = Sun on a pot
  .beam = Sun square to its rays, W/m2
  .upright = Sun on an upright face, to that on the level
  .uneven = Sun taken up that a deep pot counts double, own model, W/m2
  .tray-up-to = Sun taken up from which a tray is no help, W/m2
facts-cure-stops = Where a cure stops
  .fresh = Glass temperature of the fresh mix
  .cured = Glass temperature, wholly cured
  .lambda = DiBenedetto's lambda
  .above-cure = Glass temperature above that of the cure
facts-post-cure = Post-cure and full strength
  .full-from = Full strength is counted from
  .held-at = Post-cure, held at
  .held-for = Post-cure, held for
  .climb = Post-cure, climb in an hour
  .below = Post-cure, below the glass temperature wanted
  .within = Warmth counted within
facts-hull-colour = Sunlight that a hull takes up
facts-hull-sun = Hull in the sun
  .full = Full sun
  .air = Hull in the sun, air
  .sky = Clear sky, colder by
  .still = Convection, still air
  .breeze = Convection, breeze
  .emittance = Emittance of paint
facts-stiffness = Stiffness of a putty, yield stress
facts-putty = Putty
  .dose-spread = Any dose in the table, give or take
  .air = Air that stirring leaves in it
  .packing = Hollow spheres touch at, by volume
  .sphere-packing = Spheres stirred in pack to, by volume
  .sure = Stiffer than it must be, to be safe
facts-own-batches = Own batches of putty
  .batch-deviation = How differently the same putty is tapped, standard deviation
  .batch-worth = Batches that this judgement is worth
  .stands-out = Batch stands out from, in standard deviations
  .apart = Two batches contradict each other, one over the other from
  .far = One batch is far from the table, below and above
facts-glass-tape = Glass tape
  .fibre-density = Density of the fibre
facts-hand-laminate = Glass by weight in hand work
  .for-buying = Counted for buying
  .skilled = In skilled hands
  .equal-masses = As much resin as glass


facts-air = Heat given to the air
facts-pot-cure = How a pot cures
  .uncatalysed = What cures without help, to what cures with it
  .too-hot = Too hot to hold from
  .usable-conversion = No longer usable once cured
facts-hot = A pot that gets this hot
facts-walls = What the wall of a pot keeps back
facts-matter = What heats and cools a pot
  .heat-per-epoxide = Heat from each epoxide group
  .epoxide-weight = Epoxide equivalent weight, where the label gives none
  .undiluted = Undiluted
  .phr = Hardener to 100 of resin by weight, where the label gives none
  .specific-heat = Specific heat of the liquid mix
  .filler-heat = Specific heat of filler, from that of glass to that of wood
  .conductivity = How the mix conducts heat
  .density = Density of the mix, where the label gives none
  .wood = How plywood conducts heat, across the plies
  .bench = What a wooden bench keeps back
facts-lowest = Lowest working temperature
  .fast = Fast hardener
  .medium = Medium hardener
  .slow = Slow hardener
facts-windows = How long a mix can be used
  .soft = A bead of putty on wood
  .film = A thin film
  .exponent = Pot life goes with the mass to minus this power
  .doubling = Quicker for each { "10 K" } warmer
  .share = What a plan uses of any window
  .film-share = What is used of a film's time, where that is one to the gel
facts-counted-at = Hours until the next step, counted as at
  .opens = A window that opens: the late reading
  .closes = A window that closes: the early reading
facts-day = A day, hours after midnight
  .coldest = Coldest
  .warmest = Warmest
facts-points-gap = Cure, temperatures that are typed
  .points-gap = Hours between two of them, more is a gap
facts-cure-energy = How curing follows the temperature
  .energy = Activation energy
facts-stages = Until the next step, hardener fast, medium, slow
facts-learning = Own rates, learned from taps
  .at-once = Two taps nearer together were not timed
  .behind = Tape behind the cove, so that nobody waited
  .far = Faster or slower than usual, left out from
  .deviation = How differently the same hands work, standard deviation
facts-hands = How fast the hands are
facts-mixing = Time to mix
facts-positions = How the seam lies
facts-rates = How fast one person works
facts-losses = Left behind, taken up, put on top
  .spare = Spare on liquids
  .tooling = Taken off by tooling, of what is placed
  .backing = Backing tape, spare
  .edges = What an edge takes
facts-draughts = Draughts

## Sources

# where a figure comes from: the six marks
mark-published = published
mark-common-practice = common practice
mark-from-memory = from memory
mark-own-judgement = own judgement
mark-from-label = from the label
mark-own-figure = your own figure
mark-with-source = { $mark }: { $source }
# which facts are shown: those of one mark
sources-mark = Show
  .all = All
  .published = Published
  .common-practice = Common practice
  .from-memory = From memory
  .own-judgement = Own judgement
sources-find = Find
  .help = A word or two: hardener density
# a fact: its table, and what it is called in it
facts-row = { $table }: { $what }
# $low and $high go without the unit that stands behind $figure
facts-between = { $figure }, { $low } to { $high }
# units that are words. $figure may be several figures
facts-unit =
  .an-hour = { $figure } an hour
  .times = { $figure } times
  .of-rate = { $figure } of the rate
  .m-a-minute = { $figure } m a minute
  .ft-a-minute = { $figure } ft a minute
  .air-changes = { $figure } air changes an hour
  .pot-life = { $figure } times the pot life of { $mass }
  .face = { $figure } times what a face takes
facts-other = Any other
facts-none = Nothing found
  .text = Try one word of it, or show all.


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
