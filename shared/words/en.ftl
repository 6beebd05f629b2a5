### English. Each sentence stands here once; whoever changes a word of it touches this file alone.
### A figure in quotes, { "100 mm" }, is told in the reader's units. A comment above a message is for who translates it.

## Numbers, units and fields: what is said of what somebody typed. Each of them stands behind the label of its field

field-refused = { $label }: { $why }
number-plain = type a number in plain digits, like 240 or 1.5
number-too-small = too small to measure. Type 0 or a larger number.
number-written-out = write the number out in plain digits, like 1500 or 0.001
number-one-mark = use one comma or one point, for the decimals only
number-spaces = type one number without spaces, like 1500
number-over-zero = type a fraction like 1/2, not 1/0
unit-which = type the exact unit: { $units }
  .oz = oz for weight, or US fl oz
  .fl-oz = US fl oz or imp fl oz
  .pt = US pt or imp pt
  .gal = US gal or imp gal
  .qt = US qt, or litres
unit-of-another = '{ $typed }' is a unit of { $other }, not of { $quantity }
unit-unknown = unknown unit '{ $typed }'. Type the number alone, or another unit.
quantity-mass = mass
quantity-volume = volume
quantity-length = length
quantity-area = area
quantity-angle = angle
quantity-temperature = temperature
quantity-time = time
quantity-density = density
quantity-areal-weight = weight per area
quantity-weight-per-length = weight per length
quantity-speed = speed
quantity-flow = flow
quantity-stress = stress
quantity-equivalent-weight = equivalent weight
quantity-share = share
quantity-count = count
units-help = To use another unit, type it after the number.
field-number = type a number
  .unit = type a number ({ $unit })
field-whole = type a whole number
# $high comes with its unit
field-within = type { $low } to { $high }
field-above = type more than { $low }, at most { $high }
# the units of "7 ft 10 in"
field-finer = after { $large } type { $small }, like 1 { $large } 4 { $small }
  .whole = type whole { $large } first, then less than { $most }
field-parts = type the parts, like 100:30 or 2:1
  .count = type { $least } to { $most } numbers with a colon between them, like 100:30
  .one = '{ $typed }': { $why }
  .each = each number more than { $low }, at most { $high }
field-amount = type how much
  .unit = type how much ({ $unit })
  .positive = type more than zero
  .most = at most { $most }
# $options: each of field-choose.each
field-choose = choose { $options }
  .each = “{ $option }”
field-phone = type one phone number in digits, like +48 22 123 45 67
field-words = type a few words
field-letters = too long, type at most { $most } characters
field-too-long = too long, type less
field-no-such = '{ $row }' is not in the list. Choose one, or type its figures.
  .thing = not in the list. Choose one, or type its figures.
field-list = send a list
field-rows =
  .most = keep at most { $most }
  .least = add at least { $least }
  .none = none
field-clock = type a clock time, like 8:30 or 14:05
# the label of what is chosen beside an amount
field-of-what = { $label }, of what
# how a number was read that could be read in two ways
field-read =
  .comma = { $read } (decimals after the comma). For thousands type { $whole }.
  .point = { $read } (decimals after the point). For thousands type { $whole }.
# a word that in German is half a kilogram
unit-which-pfund = lb, or 500 g

## Door: cards, links and what leaves the phone

# what made a card or a link
made-with = Made with release { $release }
  .build = Made with release { $release }, build { $build }
recalled-unread = Made with an unknown release. Check the figures against the resin label.
recalled-before = Made with a Covemix before release { $release }, which is recalled.
recalled-with = Made with Covemix release { $release }, which is recalled.
card-of-row = { $field }, { $each } { $count }
card-row = { $each } { $count }
# what a card says of one field of a row: "length 3 m"
card-field = { $field }: { $text }
card-line = { $label }: { $text }
  .question = { $label } { $text }
  .rough = { $line } ({ $rough })
card-title = Covemix, { $title }
card-caution = Caution: { $caution }
card-trial = Test cup
card-not-worked-out = No result
card-more = More on the full card.
-link-untouched = Nothing was changed.
link-too-long = This link is too long for Covemix. { -link-untouched }
link-newer = Link from a newer Covemix. Update, then open it again. { -link-untouched }
link-cut = This link was cut short or changed on its way. Ask for it again. { -link-untouched }
link-foreign = This link has nothing for this screen, only { $names }. { -link-untouched }
link-strange = This link has unknown entries: { $names }. It may be for another mix, so it is not used. { -link-untouched }
link-twice = This link gives two values for { $names }. Ask for it again. { -link-untouched }
link-name = '{ $name }'
link-names = { $names } and { $more } more
link-more = { $count } more
recalled-one =
  .wrong = That release could give pump strokes 1 : 1 for a label by weight, or read a figure in the wrong unit. A running pot could gain minutes when the phone's clock was set back.
  .check = Check ratio and units against the resin label.

## Spreader

spreader-radii = Radius of each spreader
  .help = For several, type a colon between them.
spreader-paper = Paper
spreader-printed = The bar measures
spreader-too-many = These do not fit on one sheet. Use fewer, each at most { $largest }. Draw a larger cove with a bent batten.
spreader-measure = First measure the bar
  .text = The bar must be { "100 mm" } long. If not, print again at 100%, without fitting to the page. Still wrong: type what it measures.
  .again = This print is corrected. The bar must be { "100 mm" } long now. If not, empty its field, print and measure.
spreader-radius = Spreader, radius
  .rough = a round tip { $width } wide
spreader-cut = Then cut
  .text = Glue the paper to a stiff sheet. Cut outside the line, then sand to the line. Round no corner of the tip. Try the spreader at the sharpest and the flattest place before mixing.
spreader-sheet = Spreaders at true size
  .bar = measure me: { "100 mm" }
  .print = Print at 100%. Cut to the line.
  .corrected = For a printer that makes { $printed } of { "100 mm" }.
  .radius = R { $radius }
  .told = True size: a bar of { "100 mm" } to measure, a spreader of radius { $radii }.

## Kit

kit-kind = Kind of thing
kit-new-thing = Type a new thing, or change the figures of a typical one.
kit-no-name = Name: type a name for this thing
kit-started-from = figures { $mark }: type your own over them
# what stands on the shelf of a resin system
shelf-mixes = Still mixes
kit-shelf = Shelf life
shelf-soon = Warned before the end
shelf-last = Use it by { $day }.
  .past = Ended on { $day }. Test it first.
  .soon = Ends on { $day }. Use it first.
shelf-crystals = Resin is cloudy or grainy
  .text = loosen the lid and warm it in a water bath of { $warm } until clear: up to { $hours } if not stirred. Stir. Let it cool before you mix, or it stiffens much sooner (common practice).
kit-used-up = Used up
  .text = Nothing is left. The boat uses the other rolls.
kit-test-cup = Test cup: your own times
kit-as-built-in = Built-in figures
  .text = Not measured. Type your own: { $fields }


## Door: the moves by name

# a label, as a page names its part; what it does, verb first: "Get scale readings for a mix"
move-ratio = Ratio
  .purpose = Get every part by weight and by volume from a label and one amount
move-measure = Measure
  .purpose = Get scale readings or pump strokes for a mix
move-rescue = Rescue
  .purpose = Find what to add to save a batch
move-thicken = Thicken
  .purpose = Get filler and putty for a mix and a stiffness
move-pouring = Pour step by step
  .purpose = Pour a batch step by step, each corrected by what was poured before
move-heat = Heat
  .purpose = Get usable time and peak temperature of a batch in its container
move-trial = Test cup
  .purpose = See how fast a system cures and cools, from a small cup and a thermometer
move-cure = Cure
  .purpose = See when to peel, coat, sand and load in the coming temperatures
move-dew = Dew point
  .purpose = Get the margin above the dew point, now and through the night
move-joint = Joint
  .purpose = Get cove, tape and resin of one seam from two panels and an angle
move-spreader = Spreader
  .purpose = Draw a template at true size for a cove radius
move-coats = Coats
  .purpose = Get resin for coats on faces and edges, the film, and when each coat may follow
move-sheathing = Sheathing
  .purpose = Get cloth, resin, fill coats and where strips join, over faces
move-fairing = Fairing
  .purpose = Get fairing compound, passes and what stays, from depths under a batten
move-gluing = Glue-ups
  .purpose = Get neat resin and thickened glue for scarfs, laminations and gaps, and the clamps
move-fillets = Fillets without tape
  .purpose = Get the radius and putty of a fillet that has no tape
move-boat = Boat
  .purpose = List what to buy, what to cut and the added weight for all joints
move-plan = Plan
  .purpose = Split a day's seams into batches that this crew can lay in time
move-run = Run a batch
  .purpose = Do one batch of a plan step by step, with what is left of each window
move-pot = Pot
  .purpose = Show a running pot's minutes left, next step and alarm
move-timer = Timer
  .purpose = Show what is left of a timed step
move-kit = Kit
  .purpose = Keep one thing of the kit
move-log = Log
  .purpose = Keep a batch as one line of the log
move-timings = Timings
  .purpose = Compare your working times with the label
move-own-rates = Own rates
  .purpose = Learn from laid batches how fast this crew is
move-aid = First aid
  .purpose = Say what to do at once, in order, also for a smoking pot
move-calls = Emergency numbers
  .purpose = Keep your emergency numbers ready to dial
move-safety = Safety
  .purpose = Say the cautions that always apply
move-air = Air
  .purpose = Get minutes, limits and air flow from a room, a fan and a solvent
move-sources = Sources
  .purpose = List every figure and statement with its source


## Kinds of things, and the kit

# what a built-in thing is called for short, where nobody gave it another name
called-system =
  .one = One to one
  .two = Two to one
  .three = Three to one
  .four = Four to one
  .five = Five to one
called-scale =
  .kitchen = Kitchen scale
  .fine = Fine scale
  .old = Old scale
called-pumps =
  .equal = Equal pumps
called-cup =
  .small = Small cup
  .medium = Tapered cup
  .tin = Straight tin
  .tub = Wide tub
called-graduated =
  .medicine = Medicine cup
  .mixing = Mixing cup
  .large = Large mixing cup
called-syringes =
  .unequal = 60 and 20
  .equal = Two of 10
called-filler =
  .glass-spheres = Glass microspheres
called-room =
  .shed = Shed
  .garage = Garage
  .tent = Tent
called-fan =
  .small = Window fan
  .box = Large fan
called-roll =
  .tape = Tape 75
  .cloth = Cloth
  .ply = Peel ply 150
statements-most = Type at most { $most } hazard codes
statements-none = '{ $typed }' is not a hazard code. Type codes from section 2 of the data sheet, like H315, H317, H411
# a default that is remembered: "10 to 35 g, from memory."
remembered-help = { $range }, { $mark }.
remembered-range = { $low } to { $high }
remembered-filler =
  .cove = Wood flour for a cove.
  .epoxy = Wood flour, as % of the mixed epoxy.
remembered-each-mix = Per batch.
kind-name = Name
kind-unsaid = not known
kind-origin = Figures are
  .label = compared with its label
  .row = started from built-in figures
  .link = from a link
  .typed = as typed
  .fold = Source of the figures
  .help = Compare all figures with the label. Then choose “compared with its label”.
kind-system = Resin system
kind-system-fold = More from the label
kind-system-by-weight = Parts by weight
  .help = As the label gives them, resin first: 100:30
kind-system-by-volume = Parts by volume
  .help = As the label gives them, resin first: 3:1
kind-system-densities = Densities
  .help = Of each part, in the same order: 1.15 : 0.98 or 1.15 0.98
kind-system-weighed = Equal volumes, weighed
  .help = Fill one syringe to the same mark with each part. Weigh each without the syringe, in the same order: { "23.1 : 19.4 g" }
kind-system-parts = Names of the parts
  .help = In the same order, a colon between them
kind-system-tolerance = Ratio error the label allows
kind-system-eew = Epoxide equivalent weight, EEW
  .help = With AHEW, checks the ratio against the chemistry
kind-system-ahew = Amine hydrogen equivalent weight, AHEW
kind-system-speed = Hardener speed
  .fast = Fast
  .medium = Medium
  .slow = Slow
kind-system-pot-time = Pot life
kind-system-pot-mass = at a mass of
kind-system-pot-temperature = at a temperature of
kind-system-pot-meaning = Pot life means
  .open = not said: counts as the end of use
  .gel = the time to gel
  .work = the working time
kind-system-film-time = Working time as a thin film
kind-system-lowest = Lowest working temperature
kind-system-timings = Own timings of its pots
  .help = Type like "stiffening 31 min { "240 g" } cup { "20 degC" }". Add "in sun" if it stood there. A semicolon between two. They override the label.
kind-system-trials = Test cups
  .help = Filled in by the test cup.
kind-system-lot = Lot
kind-system-statements = Hazard codes on its data sheet
  .help = Like H315, H317, H411. These come first.
kind-system-shelf = On the shelf
kind-system-left = Left of each part
  .help = Without the cans: { "1200 : 430 g" }. The log takes off what you pour.
kind-system-made = Made on
  .like = Year first: 2026-03 or 2026-03-15
kind-system-shelf-life = Months it keeps, closed
kind-system-opened = Opened on
kind-system-open-life = Months it keeps, opened
kind-system-no-ratio = Type the ratio from the label, by weight or by volume
kind-system-other-count = By volume: type as many parts as by weight
kind-system-each = type one for each part, in the same order
kind-system-apart = By weight and densities, part { $part } is { $off } off the ratio by volume: too much for any batch. Check the label again. Empty the fields that it does not give.
kind-system-too-dense = By these two ratios, part { $part } would be { $times } times as dense as the first. Check the label. Empty the fields that it does not give.
kind-scale = Scale
kind-scale-step = Smallest step
kind-scale-most = Weighs at most
kind-scale-own-error = Scale error beyond the step
  .help = Linearity and zero drift, at most this much up or down, by its data sheet or a check weight. If empty: { $share } of the step.
kind-pumps = Pump set
kind-pumps-strokes = One stroke of each pump
  .help = In the order of the parts: { "10 : 3.4 mL" }
kind-pumps-ten-strokes = Ten strokes of each, weighed
  .help = In the order of the parts: { "115 : 33 g" }. Overrides the figure above.
kind-pumps-no-strokes = Type the mL of one stroke of each pump, or weigh ten strokes of each
kind-cup = Cup
kind-cup-bottom = Inside diameter at the bottom
kind-cup-top = Inside diameter at the rim
kind-cup-height = Inside height
  .help = From the bottom inside, upright, to the rim
kind-graduated = Marked cup
kind-graduated-holds = Highest mark
kind-graduated-step = From mark to mark
  .too-far = From mark to mark: type at most what the cup holds
kind-syringes = Syringes
kind-syringes-holds = Each holds
  .help = In the order of the parts: { "60 : 20 mL" }. One number stands for all.
kind-syringes-steps = From mark to mark
  .count = From mark to mark: type one number for all syringes, or one for each
  .too-far = From mark to mark: type at most what the syringe holds
  .help = In the order of the parts: { "1 : 0.5 mL" }. One number stands for all.
kind-filler = Filler
kind-filler-doses = Filler for 100 of mix, by weight
  .help = At the five stiffnesses, from runs to dry-edged: 8 : 15 : 25 : 38 : 50
kind-filler-density = True density, wetted
kind-filler-loose = Loose density
  .help = Weigh a level cup of the filler
kind-filler-fold = What the filler can do
kind-filler-grain = Grains
  .other = Flour, fibre, flakes
  .sphere = Hollow spheres
kind-filler-carries = In a structural seam
  .yes = May carry load
  .no = For fairing only
kind-filler-alone = Used alone
  .yes = Stands up
  .no = Needs another filler to stand
kind-room = Room
kind-room-length = Length
kind-room-width = Width
kind-room-height = Height
kind-room-volume = Volume, if known
  .help = Used instead of length, width and height
kind-room-no-size = Room: type length, width and height, or its volume
kind-fan = Fan
kind-fan-flow = Air flow
  .help = From its label. With a filter or a hose, type as little as half.
kind-people = People
  .alone = Alone
  .two = Two
  .three = Three
  .four = Four
  .five = Five
  .six = Six
kind-people-fold = Rates of one person, level seam
kind-people-hands = How many people
kind-people-learned = From own batches
  .help = Learned from the log. A rate typed above overrides it.
kind-roll = Roll or remnant
kind-roll-of = Material
  .tape = tape
  .cloth = cloth
  .ply = peel ply
kind-roll-width = Width
kind-roll-weight = Dry weight
  .help = Peel ply needs none
kind-roll-length = Length left
  .help = Boat can subtract what was cut
kind-roll-no-kind = Material: choose tape, cloth or peel ply
kind-roll-no-weight = Dry weight: type it for tape and cloth
kind-numbers = Emergency numbers
  .none = None typed yet
kind-numbers-name =
  .help = Where to use them: home, yard, harbour
kind-numbers-ambulance = Ambulance, emergency call
kind-numbers-poison = Poison centre
kind-numbers-who = Somebody to call
kind-numbers-person = Their number
kind-numbers-no-number = Ambulance, poison centre or a person: type at least one phone number


## Log and rates

# a row of batches in any form: "Batch 2"
batch-each = Batch
log-what = What was poured
  .help = The mix, as the screen shows it
  .none = A batch
log-seam = Which seam
log-temperature = Shed temperature
log-outcome = How it turned out
  .unknown = Not known yet
  .good = Cured well
  .slow = Cured slowly
  .soft = Stayed soft or sticky
  .stiff = Stiffened before use
  .hot = Got too hot
log-went-in-fold = What went in
log-lot = Lot numbers
log-mass = Mixed mass
log-readings = Actual readings
log-times-fold = Times
log-own-time = Stiffened after
  .help = From the first stir to too stiff to use
log-label-time = The label says
log-note = Note
log-laid-fold = Laid by a plan: how fast it went
log-crew = Who laid it
log-hands = How many people
log-laid = Metres laid
  .help = As on a level seam: an upright seam counts as more.
log-rows = Laid batches
log-empty = Nothing to save yet
  .text = Add at least one note about this batch.
# what is known of a batch, one after the other: "Keel, 240 g, 18 °C, lot 7, read 163 mL, 2.4 m laid, cured well"
log-piece =
  .lot = lot { $lot }
  .read = read { $readings }
  .laid = { $length } laid
  .none = nothing else noted
log-stiffened = Stiffened after
  .against = { $own }, label { $label }: { $against }
log-against =
  .sooner = { $share }% sooner
  .longer = { $share }% longer
timings-rows = Batches with a time, oldest first
timings-none = Your times
  .text = no batch has a time yet. Log when a batch stiffens.
timings-shortest = The shortest yet
  .rough = of { $count } timed batches, which differ in mass and warmth
timings-share = Yours against the label
  .rough = middle value of { $count } batches
timings-drawing = Minutes until each batch stiffened, oldest first. Bar: yours. Thick line: the label.
  .told = Minutes until each of the last { $count } batches stiffened, oldest first: { $minutes }.
own-rates = Own rates
  .none = none yet. Tap each step in Plan as you finish it.
  .text = From own batches: { $rates }
  .rough = { $count ->
    [one] from 1 own batch, { $low } to { $high }. With few batches, nearer to the rate from memory.
   *[other] from { $count } own batches, { $low } to { $high }. With few batches, nearer to the rate from memory.
  }
  .use = Use my rates
# the steps of laying a seam, in a list of rates: "place 2, tool 1, clean 1.25 m/min"
pace-place = place
pace-tool = tool
pace-clean = clean
pace-wet = wet out
pace-lay = lay
pace-roll = roll
pace-peel = peel ply
pace-all = all
pace-learned = { $count ->
    [one] { $pace } from 1 own batch, { $low } to { $high }
   *[other] { $pace } from { $count } own batches, { $low } to { $high }
  }
# where the rates of these steps are from
pace-whence = { $whence ->
    [typed] { $paces } typed
    [crew] { $paces } the crew's own
   *[remembered] { $paces } from memory
  }
# after "like" stands what is typed, as it is kept: its words stay English
learned-rates-like = From own batches: type like 'roll 0.5, 0.41 to 0.6, from 3', a semicolon between two
own-timings-like = Own timings: type like 'stiffening 31 min { "240 g" } cup { "20 degC" }', a semicolon between two
own-timings-counted = { $count ->
    [one] from 1 own timing
   *[other] from { $count } own timings
  }
trials-like = Test cups: type only what the test cup gave, a semicolon between two


## Ratio: label, parts, doubt, error

# the first two parts of a resin system where nobody typed other names; a third one
part-resin = Resin
  .inside = resin
part-hardener = Hardener
  .inside = hardener
part-number = Part { $number }
  .inside = part { $number }
# $known: the one basis that the label gives
label-only = { $known ->
    [weight] The label gives parts by weight only. For volumes, type the density of each part.
   *[other] The label gives parts by volume only. For weights, type the density of each part.
  }
label-amount-only = { $known ->
    [weight] The amount is by weight. For volumes, type the density of each part.
   *[other] The amount is by volume. For weights, type the density of each part.
  }
# in the place of the name of a system that has none
label-no-name = This resin system
# $what: both is the ratio and the pot life
label-by-link = Label from a link
  .text = { $what ->
    [pot-life] { $system } is from a link. Compare its pot life with the label, then set that under its figures.
    [both] { $system } is from a link. Compare its ratio and pot life with the label, then set that under its figures.
   *[ratio] { $system } is from a link. Compare its ratio with the label, then set that under its figures.
  }
label-example = Example, not your label
  .text = { $what ->
    [pot-life] { $system }: no label has confirmed its pot life.
    [both] { $system }: no label has confirmed its ratio and pot life.
   *[ratio] { $system }: no label has confirmed its ratio.
  }
label-whose = Which label
  .text = { $system }: { $whose }
  .no-name = No name
  .built-in = built in, figures { $mark }
  .over = changed: { $fields }
ratio-amount = Amount
  .total = mixed, in all
  .part-a = resin on hand
  .part-b = hardener on hand
  .strokes = resin pump strokes
  .putty = putty wanted
ratio-way = Measured with
  .scale = Scale
  .pumps = Pumps
  .syringes = Syringes
  .graduated = Marked cup
  .stick = Stick
ratio-bench-fold = Tools on the bench
ratio-compare = Which way is the most accurate
  .no = Only the chosen way
  .yes = Compare all tools on this bench
ratio-pumps = Pumps
ratio-scale =
  .help = With pumps: only for the top-up.
ratio-weighed-strokes = Densities: type the density of each part for weighed strokes
ratio-putty-needs = A volume of putty needs them.
ratio-type-ml = Or type the amount in mL.
ratio-type-g = Or type the amount in g.
ratio-no-figure = no figure yet
ratio-mixed-mass = Mixed, by weight
ratio-mixed-volume = Mixed, by volume
  .rough = typical densities, not verified, a few percent off
# an amount in the other basis than the label's. $typed: as it was typed, $counted: what it comes to
ratio-usual = Amount, about
  .by-volume = { $typed } counts as { $counted }, at { $density }. The ratio does not depend on that. For weights, type the density of each part.
  .by-weight = { $typed } counts as { $counted }, at { $density }. The ratio does not depend on that. For volumes, type the density of each part.
ratio-mixed-density = Density of the mix
  .rough = as mixed, before cure, if volumes add up
ratio-by-weight = By weight
ratio-by-volume = By volume
ratio-phr = Parts per hundred of resin, phr
  .rough = the other parts for 100 of resin, by weight
ratio-chemistry = Against the chemistry
  .text = { $share } of { $ideal } phr
  .rough = the label's ratio against 100 AHEW / EEW. Follow the label.
ratio-far-off = Equivalent weights
  .text = Far from the label. Check them.
ratio-wrong-way = The right way round?
  .text = More hardener than resin: { $typed }. If the label means { $turned }, type that.
ratio-label-apart = Does the label agree with itself?
  .text = By weight and densities, { $part } to { $first } is { $off } off the ratio by volume. Weights use the first ratio, volumes the second.
# $whence: what the ratio would rest on where the label does not give it by weight, by volume
doubt-no-reading =
  .weight = { $whence ->
    [remembered] no reading by weight yet. The densities are typical, not verified.
    [typed] no reading by weight yet. The densities have too few digits.
   *[weighed] no reading by weight yet. The equal volumes were weighed too coarsely.
  }
  .volume = { $whence ->
    [remembered] no reading by volume yet. The densities are typical, not verified.
    [typed] no reading by volume yet. The densities have too few digits.
   *[weighed] no reading by volume yet. The equal volumes were weighed too coarsely.
  }
doubt-right-amount = The right amount of hardener may be up to { $more } more or { $less } less.
doubt-way-out = { $basis ->
    [weight] Type parts by weight or densities from the label. Or weigh equal volumes of both in one syringe.
   *[other] Measure on a scale, or type the densities from the data sheet.
  }
doubt-no-figure =
  .weight = { $whence ->
    [remembered] no weight: densities typical, not verified
    [typed] no weight: densities with too few digits
   *[weighed] no weight: equal volumes weighed too coarsely
  }
  .volume = { $whence ->
    [remembered] no volume: densities typical, not verified
    [typed] no volume: densities with too few digits
   *[weighed] no volume: equal volumes weighed too coarsely
  }
doubt-in-short = ±{ $off } by densities
doubt-beside = Ratio in doubt
  .text = { $whence ->
    [remembered] ±{ $off }: densities typical, not verified
    [typed] ±{ $off }: densities with too few digits
   *[weighed] ±{ $off }: equal volumes weighed too coarsely
  }
  .rough = { $basis ->
    [weight] hardener up to { $more } more or { $less } less. Type the label's weights.
   *[other] hardener up to { $more } more or { $less } less. Type the label's volumes.
  }
# how exact a ratio is wanted where neither the label nor the user says it
aim-rough = ratio error up to { $good }% is good, { $much }% is too much (our own judgement). Follow your label.
aim-our-own = { $aim } (our own judgement)
error-in-ratio = in ratio
error-short = too little { $part }
error-too-much = too much { $part }
error-poured = Ratio error as poured
  .beyond = more than { $aim }
  .within = within { $aim }
error-cost = What the error costs
  .text = softening point up to { $most } lower
  .beyond = softening point over { $most } lower at worst
  .usual = usually { $usual }, at least { $least }
  .already = { $off } off already costs usually { $usual }, at least { $least }
  .short = { $costs }. Up to { $loose } of the resin never binds, and no heat can cure it. From memory, for an ideal network. No table of strength was found.
  .over = { $costs }. Up to { $loose } of the hardener never binds: it blushes and takes up water. From memory, for an ideal network. No table of strength was found.


## Fillers and doses

# how stiff a putty is: what it does on a stick
filler-stiffness =
  .runs = Runs off the stick
  .slumps = Slumps in lumps
  .clings = Clings, tips bend
  .stands = Stands, for coves
  .dry-edged = Stands, dry-edged
# what the trade compares it with, in "like syrup"
stiffness-trade =
  .runs = syrup
  .slumps = ketchup
  .clings = mayonnaise
  .stands = peanut butter
  .dry-edged = stiff dough
filling-fold = Putty: filler, blend, position
filling-thicken = Thicken
  .no = Leave it liquid
  .yes = Make putty
filling-stiffness = How stiff
filling-trade-word = like { $trade }
filling-blend = Blend of fillers
filling-blend-share = Share by weight
filling-shares-over = Shares: the sum is { $whole }, { $off } too much. Change one until the sum is 100%.
filling-shares-short = Shares: the sum is { $whole }, { $off } short. Change one until the sum is 100%.
filling-batches = Own batches of this filler
filling-batches-mixed = Resin and hardener
filling-batches-before = Filler tub before
filling-batches-after = Filler tub after
  .less = Filler tub after: type less than before
  .too-much = Filler tub after: filler is more than three times resin and hardener. Include the tub in both weights.
filling-batches-came-out = How stiff it came out
filling-batches-count = Count this batch
  .auto = unless it stands out
  .always = always
  .never = never
filling-doses-rise = type each higher than the one before, from runs to dry-edged
filling-packed = Grains would fill { $share }. They touch at about { $touch }, with no liquid between. Choose a softer putty or a finer filler: at most { $most } for 100 of mix by weight.
filling-position =
  .level = Level seam, cove facing up
  .upright = Upright seam or a wall
  .overhead = Overhead


## Measure: what the tool must show

measure-fold =
  .poured = What was actually poured
  .warm = Temperature
measure-zeroing = Zero the scale
  .once = once, with the empty cup on it
  .each = again before each part
measure-tolerance = Ratio error allowed
  .help = If empty: the label's, or { $aim }% (our own judgement).
# what one row of such figures is called, its number stands behind it
measure-row = Part
  .after = After part
measure-readings = What the scale actually showed
  .after = After this part
measure-strokes = Strokes actually pumped
  .of = Of this part
measure-drawn = Actually drawn up
  .of = In total
measure-levels = Actual levels in the cup
  .after = After this part, at the mark
measure-heights = Actual heights in the cup
  .after = After this part
  .help = Measure from the inside bottom, along the stick
measure-syringes = Syringes
  .help = Use a separate syringe for each part.
measure-graduated = Marked cup
measure-cup = Cup
  .help = Measure inside. The marks on the stick depend on it.
measure-air = Air temperature
  .help = Where the cup stands. If empty: as the mix, or as on the label.
measure-temperature = Temperature of the mix
  .help = If empty: same as the air.
# what is wrong with the figures that were read off a tool
measure-order = Type this part before later parts
measure-parts = The label has only { $count } parts. Leave this empty.
measure-rises = Type more than the level before: levels in one cup rise
measure-above = { $edge ->
    [rim] Above the rim of this cup. Check the height or the cup.
   *[mark] Above the highest mark. Check the mark or the cup.
  }
measure-too-full = { $edge ->
    [rim] The rest would rise above the rim. Tip everything into a larger cup and go on there, or weigh the rest.
   *[mark] The rest would rise above the highest mark. Tip everything into a larger cup and go on there, or weigh the rest.
  }
measure-as-read = your reading
measure-follows = adjusted to what was measured
# what stands under a figure that comes from a ratio no label has confirmed
measure-example = example
  .with = example, { $said }
measure-smallest = Smallest batch in ratio
measure-pours = Cup too small for all
  .text = { $count } equal batches
measure-in-cup = In the cup, with filler
  .plain = In the cup, at most
  .then = In the cup then, with filler


## Scale

scale-densities = Densities: { $why } A scale needs them.
scale-order = Type this reading before later readings
scale-grows = Type more than the reading before: with one zeroing, readings grow
scale-tare = Cup on the scale
  .once = Zero once. Add each part until the scale shows this total.
  .each = Zero the scale before each part.
# the label of a figure: $part is the name of a part of the mix
scale-reading = { $part }, pour until scale shows
  .zeroed = { $part }, zero, pour until scale shows
  .follows = adjusted to what was poured
  .not-again = do not zero again: this is the total in the cup
scale-poured = { $part } poured
  .rough = your reading, planned { $mass }
scale-over = Too heavy for this scale
  .text = The mix alone is { $mix }, the scale weighs at most { $most }. Weigh in two cups.
scale-rounding = Ratio error by rounding
  .rough = from the scale's step alone: { $off }
scale-spread = Scale keeps the ratio within
  .own = in about 95 of 100 batches, from its step of { $step } and its own error of ±{ $error }
  .both = in about 95 of 100 batches, from its step of { $step }, its own error of ±{ $error } and the densities
  .guess = own error: our estimate
scale-smallest =
  .rough = rounded up, for { $aim } by reading alone. Rounding and scale error not typed add more
scale-too-small = Batch too small for this scale
  .text = Below { $least } this scale cannot keep the ratio. Mix more, or use a finer scale.
scale-add = { $mass } on the scale
  .nothing = { $mass }, less than the scale can show

# a pour that is off: what to add, as the tool shows it
fix-until = { $part }, add { $mass } until scale shows
fix-part = { $part }, add
fix-strokes = { $part }, pump more
  .all = { $count } in all, so that whole strokes fit the ratio
fix-draw = { $part }, draw up more
  .all = { $volume } in all
# under it: $off is the ratio error so far, $rough what else is said of the figure
fix-why = Ratio error { $off }. You cannot take any out.
  .with = { $rough }. Ratio error { $off }. You cannot take any out.
fix-said = Ratio error. { $what } { $figure }
fix-asks =
  .pumps = Strokes in all


## Pumps

pumps-densities = Densities: { $why } Pumps need them.
pumps-for-each = Pumps: { $parts } parts, but { $pumps } pumps. Type one stroke for each part.
pumps-strokes = { $count ->
    [one] { $count } stroke
   *[other] { $count } strokes
  }
  .rough = { $volume }, { $each } a stroke
pumps-pumped = Pumped in total
  .rough = wanted { $volume }
pumps-error = Ratio error by whole strokes
  .rough = { $off }, if all strokes are full and even
  .much = { $off }, more than { $aim }: top up as below, or mix another amount
pumps-top-up = { $part }, add for the exact ratio
  .rough = after the strokes above
# $counts: whole numbers of strokes, "3 : 1"
pumps-smallest = { $counts } strokes, { $volume }
  .rough = rounded up, for { $aim } with these pumps, whole even strokes alone
  .none = none with these pumps
  .tried = up to { $strokes } strokes, no whole numbers come within { $aim }. Top up on a scale, or weigh.
pumps-yours = Are these your pumps?
  .text = These are an example: two equal pumps. Pumps made for the ratio differ. Type what one stroke of each gives.


## Marks on a cup

marks-densities = Densities: { $why } Syringes and marked cups need them.
marks-for-each = Each holds: { $parts } parts, but { $syringes } syringes. Type one for each part.
marks-drawn = { $part }, in its own syringe
  .wanted = wanted { $volume }
  .fills = { $times } × { $full } + { $last }
marks-level = { $part }, pour to the mark
  .rough = wanted { $volume }, mark gives { $marked }
marks-pours =
  .one = The cup holds { $holds }. The marks above are for one batch.
  .all = The cup holds { $holds }. The marks above are for one batch, all batches make { $volume }.
marks-more = Much more than wanted
  .text = { $marked } for { $wanted }: smaller amounts end between marks. Use finer marks or a scale.
marks-none = These marks are too coarse
  .text = No mark keeps the ratio within { $aim }. Use a cup with finer marks, syringes or a scale.
  .finer = No mark keeps the ratio within { $aim }. With marks { $step } apart, a cup must hold { $volume }. Use a cup with finer marks, syringes or a scale.
marks-error = Ratio error by whole marks
marks-spread = Ratio error by reading
  .rough = in about 95 of 100 batches, reading to one mark at eye level
marks-measured = Measured, one batch
  .rough = wanted in total { $volume }
marks-coarse = Marks too coarse for this part
  .text = { $part } is { $volume }, the marks are { $step } apart. Use finer marks or a scale, or mix more.
marks-smallest =
  .rough = { $tool ->
    [syringes] rounded up, for { $wanted } by marks alone and by reading alone, with these syringes
   *[graduated] rounded up, for { $wanted } by marks alone and by reading alone, with this cup
  }
  .none = { $tool ->
    [syringes] none with these syringes
   *[graduated] none with this cup
  }
  .why = for { $wanted }. Use finer marks or a scale.
marks-too-small = Batch too small for these marks
  .text = At least { $least }. Mix more, or use finer marks or a scale.


## Stick

stick-densities = Densities: { $why } A stick needs them.
stick-mark = { $part }, pour up to
  .rough = Measure from the inside bottom, the stick upright in the middle.
stick-pours =
  .rough = Takes { $volume } with room to stir. The marks are for one batch. Or use a larger cup.
  .room = Takes { $volume } with room to stir. Or use a larger cup.
# $error: how far each mark may be off, a length
stick-each-mark = { $error } error on each mark
stick-spread = Ratio error if each mark is { $error } off
  .rough = usual, if the marks are off independently. At worst { $worst }, wanted { $wanted }
stick-cost = { $part } { $error } too high
  .rough = ratio error, { $off }
stick-smallest =
  .rough = for { $wanted } in this cup, by the usual error, rounded up
  .none = none in this cup
  .why = even in a full cup, { $error } on each mark costs more than { $wanted }
stick-narrower = Use a narrower cup
  .text = A straight cup at most { $width } wide inside keeps the ratio. The mix stands { $height } high. Or weigh.
  .none = No cup is narrow enough and still wide enough to stir. Weigh, or use syringes.
  .rough = for { $error } on each mark
stick-narrows = Does the cup narrow upwards?
  .text = The rim is narrower than the bottom. Wrong? Swap them. If right, hold the stick upright in the middle.
stick-yours = Is this your cup?
  .text = This size is only an example. Measure yours inside: bottom, rim, height.
stick-stands = Height in the cup
  .rough = of { $height }, filler adds to it
stick-drawing = The cup from the side, to scale
  .mark = { $part } up to { $height }
  .told = A cup { $height } high inside: { $marks }.


## Tools side by side

tools-way =
  .scale = Scale
  .syringes = Syringes
  .graduated = Marked cup
  .stick = Cup and stick
  .pumps = Pumps
tools-best = Most accurate here
  .text = { $tool }, { $within }
  .rough = rounding and reading of this batch together, wanted { $wanted }
tools-none-holds = No tool keeps the ratio
  .text = No tool here keeps ±{ $limit } for so small a batch. Mix more, or use a finer tool.
tools-here = { $within } this batch, in ratio from { $least }
  .none = { $within } this batch, never in ratio for { $wanted }
# what the figures of a tool count
tools-counts =
  .scale = rounding and reading of this batch. Smallest batch: reading alone.
  .marks = rounding and reading of this batch. Smallest batch: each alone.
  .pumps = strokes vary by { $deviation } (standard deviation, typical value, not verified). Smallest batch: whole strokes alone.
tools-unfit =
  .scale = not for this label: densities not exact enough for weights
  .volumes = not for this label: needs one for each part, and densities or parts by volume
  .graduated = marks too coarse for this ratio


## Thicken

thicken-scoop = A level scoop holds
thicken-position = Position of the seam
thicken-layer = Thickness of one pass of putty
  .help = Measured from the corner out (throat).
thicken-purpose = Used for
  .seam = A structural seam
  .fairing = Fairing only
thicken-densities = Densities: type one for each part. A putty needs its weight and its volume.
thicken-packed = Too much filler
# a filler without a name: as a label, and where it begins a sentence
thicken-filler = Filler
  .this = This filler
  .caution = Dust: put on a particle mask before opening the tub. Close the lid at once.
thicken-both = { $one } and { $other }
thicken-scoops = { $filler }, level scoops
  .text = { $scoops } of { $volume }
  .rough = to half a scoop. Loose powder differs by a third or more: the weight decides.
thicken-loose = { $filler }, loose
  .rough = as it lies in the tub, not shaken down. Built-in fillers: typical value, not verified.
thicken-first = Stir in first
  .rough = { $share } of the filler. Scrape bottom and corners. Then add the rest little by little.
# how much of the filler
thicken-share =
  .half = a half
  .third = a third
  .two-thirds = two thirds
thicken-dose = Filler for 100 of mix, by weight
  .memory = ±{ $spread }, from memory
  .own = { $count ->
    [one] ±{ $spread }, from { $count } own batch
   *[other] ±{ $spread }, from { $count } own batches
  }
thicken-putty = Putty
  .rough = with { $air } air, from memory ({ $range })
thicken-density = Density of the putty
  .rough = air included
thicken-thicker = Thicker than the liquid
  .text = about { $times } times
  .rough = spheres that do not stick to each other, Krieger & Dougherty (1959)
thicken-room = The putty does not fit the cup
  .text = { $volume }, the cup takes { $room }
  .rough = with room to stir. Stir the liquids, then tip everything into a larger tub for the filler.
thicken-needed = Stiff enough not to sag
  .none = none of the five
  .doubled = layer's weight (rho g h), doubled: yield stresses are typical values, not verified (half to double)
  .times = layer's weight (rho g h), times { $sure }: yield stresses are typical values, not verified (1/{ $sure } to { $sure } times)
  .overhead = { $how }. Overhead, putty must also stick: press it in, in thin passes.
thicken-pass = At most in one pass
  .rough = for this stiffness and position, rounded down
# $stiffness, $stiffer: as they are chosen in the form
thicken-sags = This will sag
  .passes = '{ $stiffness }' is too soft for { $layer } here. Lay passes of at most { $thickest }.
  .stiffer = '{ $stiffness }' is too soft for { $layer } here. Make it stiffer: '{ $stiffer }'. Or lay passes of at most { $thickest }.
thicken-fairing-only = Not for a structural seam
  .text = { $fillers }: for fairing only, never for load in a seam. Use wood flour, cotton fibre or silica.
  .rough = common practice, the maker's sheet decides
thicken-may-it-carry = May it carry load?
  .text = { $fillers }: the kit does not say. Check the maker's sheet for seams under load, then set it in the kit.
thicken-not-alone = Does not stand alone
  .text = { $filler } settles and flows. Replace a part of it with silica.
  .rough = from memory
# $change: a share with its sign, "+12%"
thicken-own = Own batches change the dose by
  .rough = own batches count { $share }, the table the rest
thicken-batch = Own batch { $number }
  .text = { $dose } for 100 of mix by weight, { $change } from the table
  .counts = counts
  .left-out = left out
thicken-odd = Batch { $number } stands out
  .text = This dose is { $change } from the table. Check tub weights and stiffness. It counts only if you choose “always”. Or remove it.
thicken-contradict = Two batches contradict
  .text = One took { $more } more filler. A third batch shows which is right.
thicken-far = Far from the table
  .text = This batch's dose is { $change } from the table. Check its tub weights and stiffness.


## Rescue

rescue-fold = Rescue a bad batch
rescue-asked = The batch went wrong
  .no = No
  .yes = Yes, what now?
rescue-in-cup = In the cup now
  .help = In the order of the parts, without filler. If empty: the readings above.
  .mass = By weight
  .strokes = or strokes counted
  .missing = type the amount of each part, 0 for none
  .empty = the cup is empty. Pour as above, from zero.
rescue-mass =
  .each = type the weight of each part, 0 for none
  .parts = the label has only { $count } parts. Leave others empty.
rescue-strokes =
  .both = Strokes counted: type strokes or weight, not both
  .pumps = Strokes counted: choose Pumps under Measured with, or type the weight
  .each = Pumps: type one stroke for each part
  .densities = Densities: type one for each part, strokes need them here
rescue-filler-in = Filler already in
rescue-first-contact = First contact of resin and hardener, minute
rescue-now = Now, minute
  .before = Now: cannot be before the first contact
rescue-half-told = At what mass and temperature?
  .text = Type the mass and temperature of the pot life. Warm or stringy: past saving.
rescue-untold = How long is left?
  .text = Type the label's pot life. Until then: warm or stringy means past saving.
rescue-no-warmth = How warm is the mix?
  .text = Type the mix temperature. Warm or stringy: past saving.
rescue-signs = Whatever the clock says
  .text = Warm to the hand, stringy or lumpy: past saving.
  .rough = common practice
rescue-spread-out = The mix can overheat. Spread it thin at once, outdoors, on bare ground or in a tray, never under a lid. If it smokes or is too hot to hold, do not touch it and keep away. Then mix a new batch.
# $rest: what the minutes rest on
rescue-usable = Usable from first contact
  .rough = { $rest }, rounded down. Type both times to see the time left.
rescue-late = Past saving
  .text = No time to add and stir.
  .rough = usable for { $usable } from first contact: { $rest }
rescue-left = Time left
  .rough = for the new total, with { $stir } of stirring, rounded down. In total { $usable } from first contact: { $rest }.
rescue-missing = A part is missing
  .text = None of this part is in the cup yet.
rescue-off = Ratio error in the cup
  .rough = { $off }, wanted { $aim }
rescue-stays = Can stay as it is
  .text = already within { $aim }
rescue-add = { $part }, add
  .rough = for the exact ratio
rescue-nothing = Nothing to add
  .text = The mix is in ratio.
rescue-least = { $part }, add at least
  .rough = to come within { $aim }, rounded up
rescue-how = How to add
  .text = Zero the scale with the cup on it. Add, then stir everything again.
rescue-total = Liquids in the cup then
  .rough = for the exact ratio
  .pumped = with the strokes above
rescue-filler = Filler, for the same stiffness
  .rough = Filler never counts in the ratio. Stir the liquids in well before the filler.
  .least = Filler for the least added
rescue-stirred = With filler in
  .text = Work it through until no streak is left, bottom and corners too.
  .rough = common practice
rescue-no-room = Does not fit the cup
  .text = { $volume }, the cup takes { $room }
  .rough = with room to stir. Tip everything into a larger cup, scrape this one clean, then add.
rescue-fits = Fits the cup
  .text = { $volume } of { $room }
  .rough = with room to stir
  .filler = with room to stir, filler adds to it


## Pour step by step

-pouring-scrape = Scrape bottom, corners and stick.

# a step of the list: its number and what it is
pouring-step = { $number }. { $label }
pouring-cup = Cup on the scale, set to
  .said = Put the cup on the scale and set it to zero
# what is said aloud: $figure is in words
pouring-said =
  .scale = { $part } to { $figure }
  .pumps = { $part }, { $figure }
  .syringes = { $part }, draw up { $figure }
  .graduated = { $part } up to the mark { $figure }
  .stick = { $part } up to { $figure }
# how it is asked what was really taken
pouring-asks =
  .scale = Scale shows
  .pumps = Strokes pumped
  .syringes = Drawn up in total
  .stands = Level is at
pouring-zero = Zero the scale first.
pouring-one-of = One of { $pours }. { $under }
pouring-off = Ratio error
  .under = { $off }. You cannot take any out: add the part that is short.
  .said = Ratio error. Rescue this batch before you go on.
# what is wrong with this batch on this tool; .figure: $text is a figure, without a point behind it
pouring-warned = { $label }: { $text }
  .figure = { $label }: { $text }.
  .said = { $label }. { $then }
pouring-stir = Stir, liquids only
  .under = Tap to start the clock. { -pouring-scrape } Common practice.
  .cold = Tap to start the clock. { -pouring-scrape } Below { $cold }: { $longer }. Common practice.
  .said = Stir for { $time }. { -pouring-scrape }
pouring-first = { $fillers }, { $share } first
  .caution = Only after the liquids are fully mixed.
  .said = Now the filler. First { $mass }. Stir it in.
pouring-rest = { $fillers }, little by little, about
  .under = Stop when the stiffness is right: { $dose }. { -pouring-scrape }
  .said = The rest little by little, about { $mass }. Stop when the stiffness is right.
pouring-weigh = Weigh the filler tub again
  .under = Type both weights and how stiff it came out. Later doses then use your own batches.
  .said = Weigh the filler tub again.
pouring-done = Done, use it up
  .under = A full cup heats itself: spread or lay it now.
  .in-sun = A full cup heats itself: lay it now, or spread it in the shade.
  .said = Done. A full cup heats itself: use it up.
# $rest: what the minutes rest on
pouring-done-within = Done, use it up within
  .under = From first contact: { $rest }.
  .said = Done. A full cup heats itself: use it up within { $time } of first contact.
pouring-parts = Parts poured
# what the log calls a batch: $much with its unit, $name of the system
pouring-logged = { $much } { $name }
  .mixed = mixed
  .thickened = { $what }, thickened


## Time in the cup

# $rests: what the minutes mean and rest on: usable-means, cup-time-at, cup-time-rests
cup-time = Usable in the cup
  .rough = { $rests }. From first contact, rounded down
cup-time-peak = Peak temperature, if left in the cup
  .rough = { $open }. The middle gets hotter
cup-time-at = at { $air }
  .label = at the label's { $air }: warmer is shorter
  .mix = at { $air } air, mix at { $mix }
cup-time-rests =
  .shade = counted in the shade
  .memory = pot life: typical value, not verified
cup-time-clock = Start the clock


## Heat: usable time and peak

# what a mix is in: a choice, and under a curve
container-cup = Cup
  .help = Standing on a bench
container-bag = Bag
  .help = A full piping bag in the hand or on the bench
container-tray = Tray
  .help = Spread out in a flat tray
container-bead = Bead on wood
  .help = A cove of putty in its corner
container-roll = Rolled wet tape
  .help = Wet tape rolled up: a mass again
container-film = Thin film
  .help = Laid and rolled out on wood
# what a pot does from some temperature on: stands before ". Expected about 20 min after mixing."
hot-holds = It gets too hot to hold and softens the cup
  .may = It may get too hot to hold and soften the cup
hot-runs-away = It smokes, foams, melts the cup, burns skin, and can catch fire
  .may = It may smoke, foam, melt the cup, burn skin, and catch fire
hot-pot-caution = Keep watching the pot. While you can still hold it, take it outdoors. Set it on bare ground, away from anything that burns. Spread it thin if it still flows. Never put a lid on it, never bin it. Keep out of the smoke. Smoke or flames indoors: leave, close the door, call the fire service.
heat-temperature = Air temperature
  .missing = type the temperature where the pot stands. All times depend on it.
heat-system = Resin system
heat-batch = Mass in the container
  .help = Include the filler.
heat-container = Container
heat-use = Used for
heat-where = Where the mix goes
  .help = Shown with the pot.
heat-resin = Resin temperature
  .help = At mixing. If empty: same as the air.
heat-filler = Filler or glass content
  .help = Share of the total weight. If empty: none, or in wet tape { $glass }% glass (our own judgement).
heat-grain = True density of the filler
  .help = If empty: wood flour, { $flour } (from memory). Not needed for wet tape.
heat-wanted = Must stay usable for
  .help = Shows the largest batch that lasts that long.
heat-cup-width = Cup, inside width
  .help = If empty: as wide as the mix is deep.
heat-bag-width = Bag, thickness when full
heat-tray-length = Tray, length
heat-tray-width = Tray, width
heat-radius = Cove, radius
heat-panel = Panel thickness
heat-tape-width = Tape width
heat-film = Film thickness
heat-moving = Air movement
# headings of what folds away
heat-fold =
  .use = Use and place
  .sizes = Sizes and air
  .more = Warm resin, filler, time wanted
# a row of them reads: The pot was [still usable], after [31 min], with a mass of [240 g], in a [cup]
heat-timings = Own timings of this system
  .each = Timing
heat-timing =
  .said = The pot was
  .stiffening = stiffening
  .good = still usable
  .gone = too stiff to use
  .after = after
  .mass = with a mass of
  .in = in a
heat-label =
  .mass = Pot life: also type the mass it was measured with. Another cup gives another time.
  .temperature = Pot life: also type its temperature
  .film = Working time as a thin film: also type its temperature
  .unknown = Type the label's pot life with its mass and temperature. Or type your own timing of a stiffening pot.
# what the minutes mean: a share of the time until a mix is thick, and by what that time is known.
# $seen: usable-seen; $counted: from how many own timings
usable-means =
  .open = { $share }% of { $minutes } min, the label's pot life taken as the end of use
  .gel = { $share }% of { $minutes } min, the label's gel time
  .work = { $share }% of { $minutes } min, the label's working time
  .gone = { $share }% of { $minutes } min: a pot that cures no faster was { $seen }
  .good = { $share }% of { $minutes } min: a pot that cures no slower was { $seen }
  .timed = { $share }% of { $minutes } min until thick, { $counted }
# whose pot life a quick rule starts from
usable-whose =
  .own = your own timing
  .label = the label's pot life
usable-warmer = half as long for each { "10 K" } warmer
  .times = divided by { $times } for each { "10 K" } warmer
# how the quick rule knows a time. $whose: usable-whose; $warmer: usable-warmer; $hundred: a mass
usable-rule =
  .film-label = the label's film time, { $warmer }
  .multiple = { $times } times the pot life of { $hundred }, from { $whose }, { $warmer }
  .tray = as in a cup as deep as this layer, at most as a film
  .root = by the cube root of the mass, from { $whose }, { $warmer }
  .power = by the mass to the power of { $power }, from { $whose }, { $warmer }
usable-open-ends = heat, hardener, cup and air make this difference, from memory
# how hot a pot gets. $hot: a temperature, or .over
usable-peak =
  .over = over { $most }
  .or-hardly = { $hot }, or hardly above the air
  .or-only = { $hot }, at best { $cool }
# an own timing of a pot: stands after "as a pot that cures no faster was", and begins a sentence
usable-seen =
  { $said ->
    [good] still usable
    [gone] too stiff to use
   *[stiffening] stiffening
  } after { $minutes } min, { $mass } in a { $container ->
    [bag] bag
    [tray] tray
    [bead] bead
    [roll] roll
    [film] film
   *[cup] cup
  } at { $air }
  .filler = { $share }% filler
  .resin = resin at { $resin }
# a time to be done by
heat-minutes = { $minutes } min
  .none = less than 1 min
  .hours = { $hours } h
  .both = { $hours } h { $minutes } min
# $air: heat-air; $meaning: usable-means
heat-usable = Usable for
  .rough = { $meaning }. The shorter of two estimates, rounded down, at { $air }. Stop at the first sign of thickening.
heat-air = { $air } air
heat-cold = Too cold for this system
  .text = The lowest working temperature is { $lowest }. Below that the cure may stop for good, even if the mix stays liquid. Warm the shed, the wood and the resin first, or use a faster hardener.
heat-peak = Expected peak temperature
  .hardly = hardly above the air
  .hardly-rough = within { $within } of the air
  .rough = If left in the container ({ $open }). The middle gets hotter, by up to a quarter of the rise.
  .below = If left in the container ({ $open }). Both ends stay below { $hot }. The middle gets hotter, by up to a quarter of the rise.
# what does: a sentence of its own without its full stop; $do: a sentence, heat-do
heat-runaway =
  .hot = This pot gets hot
  .may-hot = This pot may get hot
  .away = This pot would overheat
  .may-away = This pot may overheat
  .sure = { $does }. Expected about { $time } after mixing. { $do }
  .may = { $does }. Possible from { $time } after mixing. { $do }
heat-do =
  .use = Use it, or spread it thin, within { $time }.
  .shade = Move it into the shade first. Then use it, or spread it thin.
  .thinner = Spread it thinner, or mix less.
heat-deep = Is the cup wider?
  .text = In a { $across } cup this batch is { $high } deep. Type the real inside width of the cup.
heat-tray = Poured into the tray at once
  .sun = In a tray in this sun
  .no-help = no help: shade first, then the tray
heat-half = Half the batch
heat-gain = { $time } longer
  .none = no time gained
heat-largest = Largest batch for { $time }
  .none = none in this container
  .none-rough = Not even a few grams last that long here. Use a tray, a slower hardener or a cooler hour.
  .none-sun = Not even a few grams last that long here. Use shade, a slower hardener or a cooler hour.
  .more = { $mass } or more
  .more-rough = time is not the limit
  .rough = by the shorter of two estimates, rounded down
heat-too-much = Too much for that time
  .text = Mix at most { $mass } at a time, or pour it into the tray at once.
  .sun = Mix at most { $mass } at a time.
heat-thick = Thick after
  .rough = { $share }% of this counts as usable (our own judgement)
heat-balance = By the heat balance
  .rough = up to { $latest } with other activation energies; one temperature in the whole pot
# $rule: usable-rule
heat-quick = By the quick rule
  .rough = { $rule } (from memory)
heat-then = Temperature at the end of use
  .rough = by the heat balance: thick, or too hot to hold
heat-layer = Layer that stays cool in the tray
  .text = at most { $layer }
  .rough = cautious limit: fastest rate, no resin used up yet
heat-in-mix = Heat in mixed resin
  .text = { $heat } J/g
  .rough = from the ratio and the equivalent weight, { $least } to { $most } kJ/mol
# what the label or a timing says, against what we estimate
heat-fact =
  .pot = Label's pot life
  .film = Label's film time
  .own = Own timing { $number }
  .good = counts only for pots that cure no faster
  .met = matches our estimate
  .long = estimate was { $off }% too long
  .short = estimate was { $off }% too short
  .rough = own timings override the label's
heat-apart = Do these times belong together?
  .text = They differ by more than { $apart }%. Check minutes, mass, temperature. Your own timings count first.
heat-energy = Activation energy
  .text = { $energy } kJ/mol
  .rough = kept within the published { $least } to { $most }, { $middle } if the times do not show it
heat-memory = Times not from your label
  .text = Pot life: typical value, not verified. Type your label's, with its mass and temperature.
heat-plan = Plan the day
heat-test = Test cup: your own times
# a drawing. $peak: heat-curve-peak
heat-curve = Temperature over time
  .told = Shaded: usable for { $usable } minutes. Curve: hottest { $hottest } minutes after mixing, at { $peak }.
  .tray-told = In the tray it reaches { $peak }.
# words in it: under the top of a curve, and in the shaded span; a tick of the scale in °C or °F
heat-curve-tray = Tray
heat-curve-usable = usable
heat-curve-degrees = { $degrees }°
heat-curve-peak =
  .about = about { $peak }
  .over = over { $peak }
usable-other-sun = Timed in other sun
  .text = { $count ->
    [one] 1 own timing was in other sun. It sets no time here, it can only limit one.
   *[other] { $count } own timings were in other sun. They set no time here, they can only limit one.
  }
# two own timings: usable-seen
usable-contradict = These timings contradict
  .text = Typed: { $one }, but { $other }. The shorter counts. Delete the wrong timing.


## Sun

sun-asked = Sun on the mix
sun-unsaid = Not set: counts as shade
sun-looks = What the sun shines on
sun-cover = Cover
sun-fold = In the sun: surface and cover
# how much sun there is
sun-level =
  .shade = None: indoors or deep shade
  .open = Shade under the open sky
  .some = Some: thin cloud, broken shade
  .full = Full sun
# what it shines on
sun-look =
  .unknown = Unknown
  .white = White tray, white or clear mix
  .bare = Bare wood
  .wet = Wetted wood or tape on wood
  .putty = Putty with wood flour
  .dark = Dark putty
  .black = Black film, cup or tray
# what is over it: a choice, and in quotes inside a sentence
sun-covered =
  .open = No cover
  .glass = Glass or clear film
# stands after "counted"
sun-where =
  .open = in the shade under the open sky
  .some = in some sun
  .full = in full sun
# $what: what is counted there, as "20 °C air", a container
sun-in =
  .open = { $what } in the shade under the open sky
  .some = { $what } in some sun
  .full = { $what } in full sun
sun-not-said = In the sun?
  .text = Shade is assumed. In the sun the mix lasts far less: set Sun on the mix.
sun-shade-first = Shade first
  .tray = Do not use a tray in this sun: the mix lasts { $tray } there. In the shade this pot lasts { $shade }. A tray helps only in the shade.
  .thin = A thin layer takes up the most sun: it lasts { $sun } here, { $shade } in the shade.
sun-in-shade = Usable in the shade
sun-taken = Sun absorbed
  .text = { $flux } W/m²
  .warm = { $flux } W/m²: sun alone warms the mix to { $warm }
# each figure with its least and most, and where it comes from
sun-rests =
  .level = { $sun } W/m² on a level surface, { $least } to { $most } ({ $source })
  .taken = { $share }% absorbed, { $least } to { $most } ({ $source })
  .cover = “{ $cover }” lets { $passes }% in, { $given }% of the heat out ({ $source })
  .wind = no wind counted


## Test cup

trial-mass = Mass in the cup
  .help = Without filler.
# stands behind the label of the air temperature
trial-air =
  .help = In the shade, where the cup stands.
  .missing = type the temperature where the cup stands
trial-stirred = Mix temperature after stirring
  .help = If empty: same as the air.
trial-readings = Thermometer
  .each = Reading
trial-minute = Minute
  .order = must be later than in the reading before
trial-shows = Temperature
  .too-hot = hotter than this mix can get. Was it °F?
  .too-cold = colder than the air and the mix at the start. Check the reading.
  .again = a cooling cup does not warm again. Check the readings.
  .soon = no mix gets this hot so soon. Check the readings.
  .misfit = does not fit the others. Check the reading.
# the heading of the four minutes below it
trial-seen = Seen by eye
trial-first = The first time.
trial-last = The last time.
trial-strings = Pulls strings at
trial-hottest = Hottest at
trial-good = Still spreads at
trial-stiff = Too stiff at
# stands behind the label of a minute
trial-too-soon =
  .good = must be later than Still spreads at. Correct one of the two.
  .strings = must be later than Pulls strings at. Correct one of the two.
trial-one-reading = One reading is not enough. Type two more, or fill in “Pulls strings at”.
trial-minute-misfit = This minute does not fit the other values. Check it.
trial-place = Place
  .text = Set the cup outdoors on bare ground, shaded, out of the wind. Keep anything that burns away.
trial-mix = Mix
  .text = Mix at most { $most }, in the label's ratio. Start the watch with the first stir.
trial-thermometer = Thermometer
  .text = Never use the thermometer for food again. Hold its tip in the middle with a stick. Wipe it before the mix sets.
trial-read = Readings
  .text = Read the thermometer while the mix warms, at the hottest, and while it cools. Or note only when the mix pulls strings.
trial-hot = The cup gets hot
  .text = From { $hot } the mix can smoke, burn skin and catch fire: leave the cup where it stands. Nobody leans over it. Never hold it. Wear gloves and goggles. Keep upwind. The product's data sheet comes first.
# $least, $most: times, heat-minutes
trial-not-sure = Not sure yet
  .text = Thick { $least } to { $most } after mixing: too wide a range to rely on. Type more readings, best while the cup gets hotter, or when the mix pulls strings.
trial-usable = This cup is usable for
  .rough = { $least } to { $most } nine times in ten, as { $share }% of the time until thick
trial-usual = { $mass } in a cup
  .rough = { $least } to { $most }
  .before = without the test { $time }
  .far = far more than tested, so less sure
trial-times = { $one } to { $other } times
trial-cures = Cures
  .rough = as fast as estimated before
trial-sheds = Loses heat
  .rough = as fast as estimated. A slower loss means a hotter pot
  .usual = as estimated
  .usual-rough = readings while it cools show it
trial-keep = Save with this system


## Cure

# what the label says of curing
label-cure-fold = Cure times from the label
label-cure-recoat = Recoat without sanding, from
label-cure-until = Recoat without sanding, until
  .early = Recoat until: must be later than recoat from
label-cure-peel = Peel ply off after
label-cure-handle = Handle after
label-cure-sand = Sand after
label-cure-full = Full strength after
label-cure-temperature = all at a temperature of
  .missing = Cure times: type their temperature from the label, often { "20 degC" }
label-cure-nothing = Hardener speed: choose it, or type the label's cure times
# the lowest working temperature of a hardener, and how it is known
lowest-known-by = { $temperature } ({ $mark })
  .slow = a slow hardener's, from memory: type the label's
cure-fold = Cure: coming temperatures
cure-system = Resin system
cure-course = Seam temperature
  .same = stays as it is now
  .day = a day's high and low
  .points = hour by hour
cure-air = Air temperature
cure-high = Warmest, in the afternoon
  .cold = Warmest: must not be colder than the coldest
cure-low = Coldest, at dawn
# hours after mixing: $last, $following, $most
cure-points = Coming temperatures
  .hours = Hours after mixing
  .temperature = Temperature
  .missing = Coming temperatures: type at least the one at mixing, hour 0
  .late = Start with the temperature at mixing, hour 0
  .order = Type the hours in rising order
  .gap = No temperature between hours { $last } and { $following }. Type a point at least every { $most } hours.
cure-mixed-at = Mixed at
  .help = Adds clock times to the windows.
  .missing = Mixed at: type the clock time, to place the night
cure-post-fold = Cure: post-cure and sun
cure-post-to = Post-cure at
  .half = Post-cure: type both temperature and time
# stands behind "Post-cure at"
cure-post-for = Post-cure for
cure-hull-colour = Hull colour over the seam
  .unsaid = not set
cure-hull-air = Hottest air in full sun
  .help = If empty: { $air }.
cure-days = { $days } days
cure-never = not at these temperatures
  .rough = the seam may stay soft for good
# $opens, $closes: hours or days after mixing, or times on the clock. $look: how one sees that it is so
cure-recoat = Recoat without sanding
  .cold = see below
  .shut = no reliable window
  .shut-rough = the window may close before it surely opens: wash, sand, then coat
  .after = { $opens } to { $closes } after mixing
  .rough = cautious at both ends. Coat { $look }
  .clock = { $opens } to { $closes }
  .clock-rough = { $opens } to { $closes } after mixing, cautious at both ends. Coat { $look }
cure-handle = Handling
  .look = move the part, do not load it
# $time: hours or days after mixing. $look: how one sees that it is so
cure-stage = after { $time }
  .clock = after { $time } ({ $clock })
  .rough = at the earliest: { $look }
cure-full =
  .by-post = after the typed post-cure
  .by-post-rough = counts as much as the days
  .warmer = hard, but stops near { $share } until warmed to { $least }, and softens above { $glass }
  .longer = hard, but stops near { $share } until warmed for longer, and softens above { $glass }
  .rough = only hours at { $least } or more count
cure-cold = Too cold for this hardener
  .stops = Below { $lowest } a hardener may stop for good: no cure is counted there.
  .lost = For { $time } the seam is below { $lowest }: no cure is counted then.
  .do = Warm the seam, not only the air. Use a tent and a gentle electric heater outside the vapours, never an open flame. Or wait for warmer days before mixing.
cure-day-counts = The first 24 h count as
  .rough = At { $temperature }, activation energy { $energy } kJ/mol. The hours above use { $least } to { $most } kJ/mol: the later result for openings, the earlier for closings.
# $temperatures: from the least to the most; $stages: "peel ply off, sand"
cure-counted = Where the hours come from
  .typical = Typical values, not verified, for a { $speed ->
    [fast] fast
    [medium] medium
   *[slow] slow
  } hardener at { $temperatures }. Your label's hours override them: type them with the system. Check a sample: a little of the same batch, kept beside the seam.
  .label = From the label: { $stages }, at { $temperature }.
  .rest = The rest: typical values, not verified, for a { $speed ->
    [fast] fast
    [medium] medium
   *[slow] slow
  } hardener at { $temperatures }. Check a sample kept beside the seam.
  .rest-unknown = The rest is not known: choose the hardener speed to see typical hours. Check a sample kept beside the seam.
cure-held = After the last point
  .text = The last temperature, { $temperature }, counts from there on. Type the coming night too.
cure-softens = Softens above
  .rough = at best { $best }, after a long time at { $held } (from memory)
cure-stops = Cure stops near
  .share = { $least } to { $most }%
  .rough = of full cure (from memory), until warmer than { $held }
# $below, $climb: differences of temperature
cure-post = For more heat resistance
  .text = Post-cure the seam at the softening point wanted: { $time } at { $temperature }, longer where cooler.
  .how = Raise the heat at most { $climb } an hour. Support the hull in its shape: the seam softens on the way. The data sheet overrides this.
  .typed = Post-cure at { $temperature } for { $time }
  .short = Too short to rely on: it takes { $time } there.
  .short-rough = as { $time } at { $temperature }, common practice
  .nothing = No sure gain: warm it more.
  .raised = The seam softens only above { $glass }.
  .raised-from = The seam softens only above { $glass }, without it above { $before }.
cure-sun = Hull in the sun
  .hot = Sun on this hull
  .any = In full sun at { $air } air, a dark hull reaches up to { $dark }, a white hull up to { $white }.
  .colour = Choose the hull colour: this seam may soften there.
  .one = Up to { $most }, in a breeze { $least }, with air at { $air }.
  .stays = The seam softens only above { $glass }.
  .may = The seam may soften above { $glass }.
  .softens = The seam softens above { $glass }.
  .shade = Shade it, support its shape, and do not load it while hot.
  .shade-paint = Shade it, support its shape, and do not load it while hot. Or paint it white.
  .shade-post = Shade it, support its shape, and do not load it while hot. Or post-cure it first.
  .shade-paint-post = Shade it, support its shape, and do not load it while hot. Or paint it white. Or post-cure it first.
  .rough = softening point: typical value, not verified


## Dew point

dew-fold = Dew and the night
dew-air = Air temperature
dew-humidity = Relative humidity
  .help = From a hygrometer beside the work. Needed for the dew point.
  .missing = Relative humidity: type it to see if the night brings dew
dew-surface = Surface temperature
  .help = Of the wood or the seam. If empty: same as the air. Stored wood is often colder.
dew-night = Coldest air in the night
dew-sky = At night the seam lies
  .under = under a roof or a tarpaulin
  .open = under the open sky
# differences of temperature: $wanted, $unsure, $colder
dew-margin = Margin to the dew point
  .unknown = type the relative humidity
  .why = cold mornings, wet sheds and hardener blush go together
dew-margin-now = Margin to the dew point, now
  .rough = Rounded down. Keep at least { $wanted }. Hygrometers may be off by { $unsure }.
dew-damp =
  .wet = The surface is wet
  .near = Too near the dew point
  .text = Do not coat or tape now. Warm the surface to { $wanted } above the dew point, or wait. A burning gas heater makes it worse: it gives off water.
dew-humid = Damp air
  .text = Above { $share } humidity many hardeners blush, however warm the surface.
dew-point = Dew point
  .rough = of this air, rounded up
dew-night-margin = Margin to the dew point, at night
  .rough = rounded down, if the water in the air stays the same
  .open = Rounded down, if the water in the air stays the same. The open sky cools a surface by another { $colder } or more.
dew-night-damp =
  .wet = Dew at night
  .near = Nearly dew at night
  .text = Keep the seam above { $least } until it is no longer tacky: cover it, close the shed, warm it. Or coat early, so the seam is hard by dusk.
# the order of work against blush
dew-blush-wash = Greasy film (blush): wash first
  .text = Pull the peel ply off, then wash with clean water and a pad. No solvent: it smears the blush.
dew-blush-dry = Then dry
  .text = Wipe dry with a clean cloth before the water dries by itself. Turn the cloth often.
dew-blush-sand = Then sand
  .text = Put mask and gloves on. Sand only now, and only what is hard. Sanding first rubs the blush in.
dew-blush-look = Then check
  .text = Water must spread as a film. If it beads, wash again.


## Running pot, timer and the phone's clocks

# how long something lasts or lasted, also aloud
span-minutes = { $count ->
  [one] { $count } minute
 *[other] { $count } minutes
}
span-seconds = { $count ->
  [one] { $count } second
 *[other] { $count } seconds
}
# what the page measures and hands in by itself; nobody types it
elapsed-now = Now
  .help = Wall time, seconds since 1970 in UTC.
elapsed-steady = By the steady clock
  .help = Seconds since the start, by a clock nobody sets. Empty after a reload.
elapsed-seen = Passed when last seen
  .help = Seconds since the start, as last shown.
elapsed-seen-at = Last seen at
  .help = Wall time then, seconds since 1970 in UTC.
elapsed-watched = On screen since then
  .yes = yes
  .no = no: hidden, or the phone slept
elapsed-jumped = Set ahead before
  .help = How far the phone's clock jumped ahead: `keep_jumped` of the last answer.
elapsed-unseen = Unseen before
  .help = Time that nobody saw pass: `keep_unseen` of the last answer.
elapsed-lost = Time lost before
  .no = no
  .yes = yes
  .help = `keep_lost` of the last answer.
elapsed-kept = Kept for the next question
timer-lasts = Lasts
timer-bound = Do it for
  .least = at least this long
  .most = at most this long
timer-left = Left
  .rough = rounded up
timer-doubt = In doubt
  .lost = The phone's clock was set back while nobody looked. Time counts on from the last value seen.
  .unseen = { $span } counted by the phone's clock alone: page closed, or phone asleep.
timer-passed = Passed
pot-started = Started
  .help = Wall time, seconds since 1970 in UTC.
pot-duration = Usable for
pot-share = Share of the time until it is thick
pot-zone = Clock here ahead of UTC
pot-zone-next = The clocks change at
  .help = Wall time, seconds since 1970 in UTC, of the first change after the start. If empty: none.
pot-zone-then = Clock here ahead of UTC from then on
pot-sent = The link was made
  .help = Wall time on the phone that made it, seconds since 1970 in UTC.
pot-by = Made by
  .help = What made the link: its release, then the build's id behind a point.
# $span is in minutes and seconds: "12:30"
pot-left-now = Left now
  .help = From another phone or your watch: minutes, or minutes and seconds.
  .unread = Left now: type minutes, or minutes and seconds, like 12 or 12:30
  .long = Left now: type at most { $span }, this pot's whole time
pot-batch = Batch
pot-container = Container
pot-place = Where the mix goes
pot-steps = Steps
  .each = Step
  .name = Step
  .minute = Due after
  .done = Done
  .not-yet = not yet
  .is-done = done
  .unnamed = Step: type a name. It is read aloud
  .order = Due after: put the steps in order of time
pot-changes = The air changed
  .each = Change
  .after = After
  .usable = Usable for, in that air
  .usable-help = As if mixed there: by the heat balance or the label.
  .order = After: put the changes in order of time
# what a mix is for
pot-use =
  .any = anything
  .putty = putty in a cove
  .wet = wetting out tape
pot-start = Start the clock
pot-remaining = Left
  .rough = rounded down to be safe
  .soon = last minutes: finish what is placed, mix nothing in
pot-over = Overdue by
  .rough = past its usable time
pot-stop = Time is up
  .text = Use no more of this pot.
# $span is in minutes and seconds: "12:30"
pot-next = Next
  .due = due in { $span }
  .late = overdue by { $span }
pot-ends = Ends
  .rough = rounded down to the minute to be safe
pot-alarm = Set the phone's own alarm
  .rough = this page cannot ring while the screen is off
  .of-step = for the phone's own alarm
# times on the clock: $before, $after, $end
pot-clocks-change = Summer time
  .rough = the clocks go from { $before } to { $after } first
  .text = The pot ends at { $end }. The clocks go from { $before } to { $after } first.
pot-meaning = What the minutes mean
  .text = { $share } of the time until it is thick, the rest is reserve
# read aloud. $batch: what the user calls the pot, $step: what comes next, in the user's words
pot-aloud = Read aloud
  .left = { $batch }: { $span } left.
  .over = { $batch }: time is up, { $span } ago. Use no more of this pot.
  .next-in = Next: { $step }, in { $span }.
  .next-now = Next: { $step }, now.
pot-passed = Since mixing
pot-used = For the log
  .text = used { $span } after mixing
pot-again = If still usable
  .text = check again in { $span }
pot-set = Passed, as typed
pot-step-place = Place of the next step
# what a running pot cannot know
pot-recalled = Made by a recalled version
pot-long-ago = Long ago
  .text = This pot ended while the page was closed. If you have another pot now, or changed the clock, end this one.
pot-link-times = The link does not fit
  .text = The link says that it was made before its pot was mixed. If in doubt, treat the pot as used up. Set below what is left on the other phone.
pot-clocks-differ = The phones' clocks differ
  .text = This phone is at least { $span } behind. The pot counts from when the link was made. How long the link took is not known. Set below what is left on the other phone.
pot-on-its-way = On its way
  .text = The link was made { $span } ago, by the two phones' clocks. If you got it just now, the clocks differ and this pot ends too early. Set below what is left on the other phone.
pot-clock-changed = The phone's clock changed
  .ahead = The clock is { $span } ahead of the time counted here. Use the earlier alarm.
  .before = The clock shows a time { $span } before this pot was mixed, or the pot was started on a phone whose clock differs. Use the earlier alarm.
  .behind = The clock is { $span } behind the time counted here. Use the earlier alarm.
pot-lost = The time passed is in doubt
  .text = More time may have passed than is counted: the phone's clock was set back while nobody looked. If in doubt, treat the pot as used up.
pot-unseen = While nobody looked
  .text = { $span } counted by the phone's clock alone: page closed, or phone asleep. If the clock was set back then, less is left.
pot-unnamed = Pot
# what a clock that is started is called, and what is to be done next
pot-start-batch = { $mass } at { $air }
pot-start-next = Tape rolled on the soft cove


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
# $day: one of clock-weekday
clock-on-weekday = { $time } on { $day }
clock-weekday =
  .mo = Monday
  .tu = Tuesday
  .we = Wednesday
  .th = Thursday
  .fr = Friday
  .sa = Saturday
  .su = Sunday


## Plan

### Plan: what is typed

plan-pieces = Pieces in laying order
  .each = Piece
plan-piece-name = Name
plan-piece-face = Face
plan-piece-length = Length
plan-piece-putty = Putty
  .help = 0 for tape without a cove.
plan-piece-wet = Wet-out resin
  .help = 0 without tape.
plan-piece-layers = Layers of tape
  .help = Each is wet out, laid and rolled.
plan-piece-position = Position
plan-surfaces = Coats and cloth, after the seams
plan-surface-wet = Resin into the cloth
  .help = Faces works it out.
plan-surface-coats =
  .help = Cloth is the first.
plan-crew = People
plan-people = People today
  .as-above = As above
plan-hand = Skill
plan-system = Resin system
plan-temperature-is = Temperature
  .constant = stays the same
  .points = changes during the day
plan-temperature = Wood and air temperature
  .help = The warmest counts.
  .missing = type it first. All times of the plan depend on it
plan-points = Temperature during the day
  .each = Time
  .help = From the start to the end of the work.
plan-point-at = Time
plan-point-temperature = Temperature
plan-start = Start
  .help = First mixing starts.
plan-finish = Finished by
plan-pause = Pause between batches
  .help = Gloves, tidying, the next pieces laid out.
plan-one-mix = One mix for putty and tape
  .sound = where it is safe
  .never = never
plan-long = A piece too long for one batch
  .cut = is cut, with an overlap
  .whole = stays whole
plan-overlap = Tape overlap at the cut
plan-scale = Scale
plan-smallest = Smallest accurate mix
  .help = If empty: from the scale, the ratio and the label's allowed ratio error.
plan-most = Largest mix wanted
  .help = What cup and bag hold, filler included. If empty: { $calm }, { $warm } where it is warm (own judgement), more if that cannot overheat.
plan-filler = Filler in the putty
plan-left-putty = Stays in cup and bag
plan-left-wet = Stays in cup and roller
plan-spare = Spare
plan-soft = A cove stays soft, at { $at }
  .help = If empty: { $times } times the pot life of { $mass } (from memory, { $low } to { $high }).
plan-film = A film stays wet, at { $at }
  .help = If empty: the label's, or { $times } times the pot life of { $mass } (from memory, { $low } to { $high }).
plan-timings = Own timings besides the system's
  .help = Type like "stiffening 31 min { "240 g" } cup { "20 degC" }". A semicolon between two. Clock fills them in.
plan-exponent = Pot life falls with mass to the power
  .help = If empty: { $power ->
     [third] a third
    *[other] { $power }
  } (from memory, { $low } to { $high }).
plan-doubling = Faster for each { "10 K" } warmer
  .help = { $times } times: common practice, { $low } to { $high }.
plan-share = Share of each time to use
# minutes of mixing
plan-mixing-help = From memory, { $low } to { $high }.
# m/min
plan-rate-help = Level seam, one person. If empty: the crew's, or { $rate } (from memory, { $low } to { $high }).
plan-pace = Level, one person.
plan-fold-left = What stays behind
plan-fold-times = Usable times
plan-fold-rates = Own rates
plan-fold-live = Under way
plan-fold-batch = Batch { $number }: amounts and steps

### Plan: what is done so far

plan-running = The day
  .no = is only planned
  .yes = is under way
plan-clock = Time now
  .help = Filled in by the phone.
plan-done = Done so far
  .each = Step
  .coats = Coats done so far
plan-done-batch = Batch
plan-done-minute = Done at
  .help = Minutes after the plan's start. A minus means before it.
plan-now = Now
  .help = Minutes after the start.
plan-done-step = Step
  .mix = Putty mixed and bagged
  .place = Bag empty
  .tool = Cove tooled
  .clean = Edges clean
  .wet-mix = Wet-out resin mixed
  .wet = Tape wet out
  .lay = Tape laid
  .roll = Air rolled out
  .peel = Peel ply down

### Plan: what is refused

plan-refused-pot-time = Pot life: type it, from the label or your own timing
plan-refused-pot-mass = Pot life: type the mass it is for
plan-refused-pot-temperature = Pot life: type the temperature it is for. The label says it, often { "20 degC" } or { "25 degC" }
plan-refused-densities = Densities: needed for the smallest mix by weight. Type them, or type Smallest accurate mix
plan-refused-nothing-to-do = Putty: this piece has neither putty nor wet-out resin. Type one, or remove the piece
plan-refused-pieces = Too many: more than { $most } pieces, once cut so that each can be laid in time. Plan one day's seams at a time
plan-refused-batches = Too many batches: more than { $most }. Plan one day's seams at a time
plan-refused-points = Temperature during the day: type the time and temperature at the start
  .twice = Time: this time is listed twice. Type a later one
  .back = Time: type the times in order, within one day
  .late = Time: type a first temperature at { $start }, the start, or earlier
plan-refused-step-twice = Step: this one is listed twice for batch { $batch }. Remove one
plan-refused-step-order = Done at: this does not fit the order of the batch's steps. Correct the time

### Plan: limits and pieces

# what may run out: each stands inside a sentence
plan-limit-bag = the putty in the bag
  .why = Empty the bag before the putty stiffens.
  .done = Bag empty
  .late = Empty the bag now: spread the rest thin outdoors. Mix less next time.
plan-limit-cup = the wet-out resin in its cup
  .why = Empty the cup onto the tray before the resin stiffens.
  .done = Cup empty, onto the tray
  .late = Pour the resin onto the tray now, or outdoors. Mix less next time.
plan-limit-cove = the soft cove
  .why = Roll the tape while the cove is soft.
  .why-bare = Tool the cove while it is soft.
  .done = Tape rolled on the soft cove
  .done-bare = Cove tooled while it is soft
  .late = Do not push tape into stiffening putty. Let it harden, wash and sand it, then tape.
  .late-bare = Leave the stiff cove. Let it harden, sand it, fill what is missing.
plan-limit-film = the wet-out resin
  .why = Lay the peel ply while the resin on the tape is wet.
  .done = Peel ply down on wet tape
  .late = Lay peel ply only where the tape is still wet. Elsewhere let it cure, wash and sand it.
plan-limit-size = the largest mix wanted
  .why = No mix is larger than the largest wanted.
  .late = Mix less at a time.
# why no mix is larger than $most; $calm: what does not run away
plan-largest-typed = at most { $most }, as you typed
plan-largest-calm = at most { $most }: more in one bag or cup can overheat and smoke (from memory). To change the limit, type Largest mix wanted
plan-largest-coarse = at most { $most }. Above { $calm }, one bag or cup can overheat and smoke (from memory). This scale cannot measure a smaller mix accurately: use a finer scale. To change the limit, type Largest mix wanted
  .putty = at most { $most }. Above { $calm }, one bag or cup can overheat and smoke (from memory). This scale cannot measure a smaller mix of putty accurately: use a finer scale. To change the limit, type Largest mix wanted
plan-largest-alone = at most { $most }, more only where one piece needs it. More in one bag or cup can overheat and smoke (from memory): use it up at once. For smaller mixes, plan shorter pieces. To change the limit, type Largest mix wanted
plan-largest-not = no plan works with at most { $most }. More in one bag or cup can overheat and smoke (from memory): use it up at once. For smaller mixes, plan fewer seams at a time, more hands or cooler hours
# a piece without a name
plan-piece = Piece { $number }
# a piece that is cut
plan-piece-part = { $name } ({ $part } of { $parts })
# $crews is more than one
plan-batches = { $count ->
     [one] { $count } batch
    *[other] { $count } batches
  }
  .crews = { $count ->
     [one] { $count } batch
    *[other] { $count } batches
  }, { $crews } pairs side by side

### Plan: windows

plan-window-bag = Bag of { $mass } at most
plan-window-cup = { $mass } in the cup
plan-window-cove = The cove stays soft
plan-window-film = Wet tape stays wet
plan-window-at = { $time } at { $air }
plan-window-typed = { $share } of { $time }, the time you typed
# $meaning: like "80% of 30 min, when it gels by the label"; $by: by what that was reckoned, one of plan-by
plan-window-by = { $meaning }, by { $by }
  .longer = { $meaning }, by { $by }. By { $other } it is { $longer }: the shorter counts
plan-by-label = the label's film time
plan-by-rule = the quick rule
  .own = the quick rule from your own timing
# $own: like "from 3 own timings"
plan-by-heat = the heat balance
  .own = the heat balance { $own }

### Plan: its lines

plan-count = To mix
plan-memory = { $what } from memory
  .own-first = { $what } from memory, your own timings first
  .none = by your own times and rates
  .rule = quick rule
  .windows = windows
  .rates = rates
plan-end-tape = Last peel ply down
plan-end-cove = Last edges clean
plan-end-rough = at these rates, { $pause } between batches, rounded up
plan-slack = Least time to spare
  .missed = none: { $time } too late
  .rough = beyond the { $share } in reserve
# $why: one of plan-largest
plan-largest = Largest mix
  .filler = with filler, { $why }
plan-surplus = Surplus in all
  .rough = no mix below { $least } can be measured accurately. Use a finer scale, pumps or syringes, or more seams in a batch. Use the surplus on tie holes and end grain first
plan-rates = Rates, one person
# $what: one of plan-limit; $all: batches
# $window: like "80% of 30 min, when it gels by the label"
plan-binds = Limited by
  .some = { $what }, in { $ended } of { $all }
  .all = { $what }, in each batch but the last
  .least = { $what }: least time to spare
  .one = { $what }: least time to spare, though all fits into one batch
  .counted = Counted: { $window }
plan-ready = Have ready
  .cups = { $count ->
     [one] { $count } cup
    *[other] { $count } cups
  }
  .bags = { $count ->
     [one] { $count } bag
    *[other] { $count } bags
  }
  .gloves = { $count ->
     [one] { $count } pair of gloves
    *[other] { $count } pairs of gloves
  }
  .for-mix = a cup for each mix
  .for-putty = a cup for each mix, a bag for each batch of putty
# $help: one of plan-help; $batches: how many it takes with it
plan-help = Would help
  .batches = { $help }: { $batches }
  .instead = instead of { $count }
  .nothing = No change tried gives fewer batches
  .tried = tried: helper, cooler hours, slower hardener, small { $of ->
     [bags] bags
    *[cups] cups
  }
plan-help-helper = With a helper
plan-help-shade = Shade over everything
plan-help-cooler = Start earlier or move to the shade, { $cooler } cooler
plan-help-earlier = Start { $hours ->
     [2] two hours
    *[other] { $hours } hours
  } earlier
plan-help-slower = A hardener { $times } times as slow
plan-help-small = Two small { $of ->
     [bags] bags
    *[cups] cups
  } for each mix
  .tray = Two small { $of ->
     [bags] bags
    *[cups] cups
  } for each mix, or spread in a tray first
plan-cold = Too cold for this hardener
  .text = { $air } is below its minimum, { $lowest }. Warm the place, or use a faster hardener.
  .label = the label's
# $where: sun-where
plan-sun = Times are for bag, cup, cove and tape { $where }. Keep the tray and the laid work in the shade.
# names of pieces; $parts: more than one
# $limit: one of plan-limit; $mark: how the overlap is known
plan-cut = Too long for one batch
  .one = Cut { $name } into { $parts }, tape overlap { $lap }.
  .each = Cut { $names } each into { $parts }, tape overlap { $lap }.
  .more = Cut { $names } and { $more } more each into { $parts }, tape overlap { $lap }.
  .rough = limited by { $limit }, overlap { $mark }
plan-none = No plan
  .late = { $name } cannot be laid in time: { $over } too late for { $limit }.
  .temperature = The pieces cannot be laid in time because the temperature changes.
  .scale = { $name } cannot be laid: no mix below { $least } can be measured accurately, but the largest wanted is { $most }.
  .whole = { $name } cannot be laid: it needs a mix of { $least }, but the largest wanted is { $most }.
  .cut = { $name } cannot be laid. Whole, it needs a mix of { $least }. Cut small, it needs more than the largest wanted, { $most }.
  .by-scale = by the scale, the ratio and the label's allowed ratio error
  .by-typed = smallest accurate mix as typed
  .filler = filler included
plan-change = Change
  .cut = Cut it at a bulkhead or where an overlap is allowed. Plan again.
  .cut-or-mix = Cut it at a bulkhead or where an overlap is allowed, or allow a larger mix. Plan again.
  .scale = Use a finer scale, pumps or syringes, or a larger mix.
  .all = Use shorter pieces, more hands, cooler hours and a slower hardener together.
plan-asked-temperature = Temperature
  .gap = None typed between { $before } and { $after }. Type one, unless it changes evenly there.
  .after = None typed after { $time }: the last one is taken to stay.
plan-long-day = More than a day?
  .text = The work lasts until { $end }. Plan the pieces of one day at a time, for the hours you can work.
plan-too-late = Not finished in time
  .text = { $over } after { $finish }. Leave whole batches for another day.
# $own: like "from 3 own timings"
plan-own-timings = Own timings of this system?
  .text = Times are counted { $own } typed on this plan, under Usable times. For another system, empty the field.
plan-not-here = Done so far
  .batch = This plan has no batch { $number }. Correct or remove it.
  .step = Batch { $number }: '{ $step }' is not a separate step here. Type the next one.

### Plan: each batch

plan-batch = Batch { $number }
  .done = Batch { $number }, done
  .begun = Batch { $number }, under way
  .pair = Batch { $number }, pair { $pair }
  .pair-done = Batch { $number }, pair { $pair }, done
  .pair-begun = Batch { $number }, pair { $pair }, under way
plan-span = { $start } to { $end }
plan-air = Air at mixing
# $what: one of plan-limit
plan-missed = Too late
  .text = At { $when } the step is done, but { $what } lasts only until { $by }.
plan-do-not-start = Do not start
  .text = Batch { $number } would not be laid in time.
  .finish = the batch would not be finished in time
  .latest = the latest start was { $time }
plan-latest = Latest start
  .rough = after that, leave the batch for another day
plan-amount-mix = Mix for putty and tape
  .rough = mix in a cup. Put { $tray } onto the tray. Stir { $filler } of filler into the rest and bag it: about { $bag } of putty (from memory)
  .surplus = mix in a cup. Put { $tray } onto the tray, { $over } of it surplus. Stir { $filler } of filler into the rest and bag it: about { $bag } of putty (from memory)
plan-amount-putty = Putty
  .rough = cup, then { $filler } of filler, then the bag, about { $bag } of putty (from memory)
plan-amount-wet = Wet-out
  .rough = cup, at once onto the tray
# $parts: like "100 g resin + 30 g hardener"
# $ratio: like "3 : 1"
plan-amount-parts = { $mass }: { $parts }
  .part = { $mass } { $name }
  .by-volume = { $mass }: { $ratio } by volume
plan-over = Surplus
  .rough = no mix below { $least } can be measured accurately
plan-by-tape = Start mixing the wet-out
  .one-mix = Start wetting out
  .rough = after that, tape the hard cove another day
plan-by = by { $time }
  .rough = rounded down to be safe
plan-step-mix = Mix and bag the putty
  .one-mix = Mix for putty and tape: keep the wet-out part, thicken the rest, bag it
plan-step-place = Place the putty
plan-step-tool = Tool the cove
plan-step-clean = Clean the edges
  .side-by-side = Tool and clean, piece by piece
plan-step-wet-mix = Mix the wet-out resin, pour onto the tray at once
plan-step-wet = Wet out the tape on the tray
plan-step-lay = Lay the tape
  .soft = Lay the tape on the soft cove
plan-step-roll = Roll the air out
  .side-by-side = Wet out, lay, roll, piece by piece
plan-step-peel = Lay the peel ply
plan-step-done = done
# who of a pair does it; $step: one of plan-step
plan-who-first = Person 1: { $step }
plan-who-second = Person 2: { $step }
plan-who-mixer = Mixer: { $step }
# a coat; $name: its face
plan-layer = { $name }, coat { $number } of { $count }
  .cloth = { $name }, cloth
plan-layer-next = Next coat from { $opens }, laid by { $closes }, else wash and sand from { $sands }
  .late = Wash and sand from { $sands }, then the next coat
  .open = Next coat from { $opens }
plan-layers-end = Last coat on
  .rough = at this pace (own judgement), the last temperature taken to stay. The label comes first.
plan-layers-mixing = Mix a pot at

### Plan: the drawing of the day

plan-timeline = The day's batches
  .batch = batch { $number } from { $start } to { $end }
  .mix = mixing
  .putty = putty
  .tape = tape
  .peel = peel ply
  .cove = cove hard
  .film = wet tape stiff
  .both = cove hard, or wet tape stiff

### Plan: what is done next

plan-begin = Start the day
# $what: one of plan-amount
plan-pour = Pour batch { $number }: { $what }
  .card = Pour: { $what }
plan-tap = Batch { $number }: { $step }
plan-start-clock = Start the clock of batch { $number }, planned { $time }
# what the log calls a batch of a plan
plan-logged = Batch { $number } of the plan
# from one piece to another
plan-pieces-to = { $first } to { $last }


## Joint

joint-fold =
  .along = Changing angle, copies
  .cove = Cove size
  .edges = Panel edges
  .glass = Tape and glass
  .on-top = Peel ply and coats
  .losses = Losses and spare
  .strength = Strength of the panel
joint-kind = Kind of joint
  .inside = Inside corner
  .inside-help = Cove and tape
  .outside = Outside corner
  .outside-help = Fill the open V, round the edge, tape it
  .both = Both faces of a corner
  .bulkhead = Bulkhead
  .bulkhead-help = Two inside corners
  .butt = Butt
  .butt-help = Panels in line
  .strip = Reinforcement strip
  .strip-help = Tape on a flat face
joint-thickness = Panel thickness
  .help = Of the thinner panel.
joint-angle-is = Angle along the seam
  .constant = same everywhere
  .stations = changes
joint-angle = Inside angle
joint-stations = Angles along the seam
  .help = The first to the last station is the seam length. Between stations the angle changes evenly.
# one row of them: how far along the seam
joint-station = Station
joint-station-at = Distance
joint-length = Seam length
joint-gap = Gap
joint-copies = How many
  .help = Count mirror images too.
joint-layers = Layers of tape
  .help = The first lies on the putty.
joint-layer = Layer
joint-layer-width = Width
joint-layer-weight = Dry weight
joint-layer-side = Goes on
  .each = each face
  .first = inside or first side
  .second = outside or other side
joint-sized = Cove size
  .rule = by throat and width
  .flank = as wide as the tape allows
  .radius = by a radius
  .spreader = by a spreader you have
joint-radius-typed = Radius
  .help = Of the spreader's tip.
joint-throat-wanted = Throat wanted
  .help = If empty: the panel thickness (common practice), or what the width gives.
# $times, $low, $high: without a unit
joint-cove-width = Width of the cove
  .help = Straight across. If this and the throat are empty: at most { $times } × the panel thickness (common practice, { $low } to { $high }).
  .rough = straight across
joint-least = Smallest radius
joint-flank = Tape on bare panel, each side
joint-clear = Room on the panel, each side
  .help = For a stringer or sole close by. If empty: no limit.
joint-bevel = Bevel of each edge
  .help = From square. The outer corner sticks out.
joint-touch = Edges touch
  .cut = as they are cut
  .outer = at the outer corners
joint-finish = Outer edge
  .round = rounded over
  .sharp = filled to a sharp edge
  .chord = filled flush, corner to corner
joint-round-over-typed = Rounding radius
  .help = If empty: the panel thickness.
joint-overlap = Ends overlap
joint-stagger = Stagger of layer ends
joint-reach = Longest piece laid in one go
  .help = What one person can lay (from memory).
# $buying, $skilled, $equal: percent of the laminate, without the sign
joint-fraction = Glass by weight
  .help = Our own judgement: { $buying }% for buying. Common practice: { $skilled }% when skilled, { $equal }% by equal masses.
joint-fibre-density = Density of the glass
  .help = Default: E-glass.
joint-resin-density = Density of mixed resin
joint-ply-wanted = Peel ply
  .yes = over the tape
  .no = none
joint-ply-margin = Peel ply past the tape, each side
joint-ply-takes-up = Resin in peel ply
joint-primed = Bare wood primed
  .no = no
  .faces = under the tape
  .edges = under tape and on edges
joint-weave-filled = Weave filled
  .once = once
  .twice = twice
  .no = no
joint-putty-density = Density of the putty
joint-tooling = Taken off by tooling
  .rough = of the putty placed (from memory)
joint-bag = Left in each bag
joint-cup = Left in each cup
joint-tray = Left in the tray, per wetted area
joint-roller = Left in the roller
joint-spare = Spare on liquids
joint-batches = Number of batches
joint-panel = Panel
  .ply = plywood
  .solid = solid wood
joint-grain = Face grain
  .unknown = not known
  .along = along the seam
  .across = across the seam
  .help = Not known counts as the stronger panel, so the seam must carry more.
# $ply: how thick one is
joint-plies = Plies
  .help = If empty: one for each { $ply } (common practice).
joint-panel-strength =
  .help = Along the face grain. If empty: plywood { $ply } ({ $range }, from memory), solid wood { $solid } (our own judgement).
joint-knock = Strength that glass and putty keep
  .help = After water, fatigue and voids: { $range }, our own judgement.

# what decided the radius of a cove; several stand side by side with a semicolon
joint-why =
  .rule = by the throat rule (common practice)
  .width = by its width, { $times } × the panel (common practice)
  .least = smallest radius for glass and tool (from memory)
  .tape = limited by the tape, which must lie on bare panel
  .room = limited by the room on the panel
  .flat = from { $angle }° up, flat tape alone (common practice)
  .own = your value
# a face of a joint, behind "Tape,"
joint-face =
  .inside = inside
  .outside = outside
  .one-side = one side
  .other-side = other side
  .one-face = one face
  .other-face = other face
  .strip = strip
joint-putty = Putty to mix
  .rough = rounded up, with losses (density from memory)
joint-liquid = Resin for tape
  .rough = resin and hardener, rounded up, with losses and spare
joint-cove = Cove
  .none = none: flat tape
joint-radius = Cove radius
joint-throat = Throat
  .rough = from the corner out, rounded down
joint-tack = Tack no further than
  .rough = from the corner, rounded down. Clean up to this line too.
  .rough-narrowest = from the corner, at the narrowest place, rounded down. Clean up to this line too.
joint-arc = Cove arc length
joint-passes = Passes
  .rough = putty deeper than { $throat } heats and sags. Let the first pass stiffen (our own judgement).
joint-tape-carries = What carries the seam
  .text = the tape, where the cove is limited or left out
  .rough = the throat is thinner than the panel there
# the cove at one place along the seam. $angle: with its sign
joint-station-line = At { $at }
  .cove = { $angle }: radius { $radius }
  .flat = { $angle }: flat tape
# of a bulkhead
joint-other-side = Other side
  .at = At { $at }, other side
joint-round-over = Round the outer edge to
  .panel = the panel thickness
joint-cover = Left at the corner
  .rough = wood and putty, at the thinnest place
joint-thin-cover = A thin edge
  .text = Rounding to { $radius } leaves only { $cover } at the corner. Round it less.
joint-outside-flank = Tape on the flat outside
  .rough = each side of the bend, the narrowest layer
# $face: of joint-face; $pieces: "2 × 1.55 m"
joint-tape = Tape
  .of-face = Tape, { $face }
  .text = { $pieces } of { $width }, { $weight }
  .rough = in laying order, ends overlap { $overlap }
joint-pieces = { $copies } × { $pieces }
  .several = { $copies } × ({ $pieces })
joint-laminate = Laminate thickness
  .text = { $thickness } { $unit }
  .rough = at least, air not counted. Also the step at the tape's edge.
joint-ply = Peel ply
  .text = { $length } of { $width }
  .rough = rounded up
joint-section = Putty cross-section
  .rough = in place, average along the seam
  .rough-faces = in place, both faces, average along the seam
joint-putty-in-place = Putty in place
  .rough = as drawn, no losses
joint-kept = Left in bag and cup
  .rough = same for each batch (from memory)
joint-wet-out = Resin in the glass
  .rough = for { $glass } of glass
joint-ply-takes = Resin in peel ply
  .rough = from memory
# $times, $mixed, $low, $high: of the glass by weight
joint-resin-on = Resin that stays on
  .times = { $times } × the glass
  .rough = in glass and weave, for the weight. Weighed seams: { $low } to { $high } × (common practice). Mix { $mixed } ×, so that it does not run short.
joint-spare-kept = Spare on liquids
joint-prime = Primer on bare wood
  .rough = a separate batch (from memory)
joint-weave = Resin to fill the weave
  .rough = a separate batch, later (from memory)
joint-added = Added to the hull
  .rough = putty, glass and resin that stay
# how much of what the panel carries; rounded down
joint-strength = Weaker of seam and panel
  .seam = the seam: { $share } of the panel
  .panel = the panel: the seam carries { $share } of it
  .share = { $share } of the panel
  .estimate = An estimate, not an approval: plans and class rules come first.
  .knock = Glass and putty count with { $left } of their strength, after water, fatigue and voids.
  .inner = Bent, inside stretched
  .outer = Bent, outside stretched
  .one-face = Bent, first face stretched
  .other-face = Bent, other face stretched
  .pull = Pulled straight
  .sideways = Bulkhead bent sideways
  .off = Bulkhead pulled off
  .tears = the glass tears first
  .crushed = the glass is crushed first
  .shears = the wood under the tape shears first
  .cracks = the putty cracks first
  .pressed = the putty is crushed first
  .peels = the face veneer peels first. Tape is not counted.
# on bare panel, each side; wider than $useful gains nothing
joint-strength-flank = Flank of the tape
  .text = { $flank } each side, useful up to { $useful }
  .enough = long enough: the glass tears first
  .short = too short: from { $wanted } up the glass tears first
  .wood = the wood under it is weaker than the glass, however wide the tape
# where two pieces of tape meet
joint-strength-lap = Ends overlap, for strength
  .text = { $lap } of { $overlap } needed
  .enough = long enough
  .short = too short
joint-would-carry = Would carry it
  .text = { $layers } × { $weight }, { $width } wide, on each face
  .bends = { $layers } × { $weight }, { $width } wide, on each face: for bending, not for a straight pull
  .none = no tape that we tried: the wood under it is too weak for the straight pull
joint-strength-model = How strength is estimated
  .text = Panel of { $strength } along its face grain. Glass by ISO 12215-5 as recalled, from memory. Wood under the tape and putty: our own judgement.
joint-wide-gap = Wide gap?
  .text = The gap of { $gap } is wider than the panel is thick. Put in a strip of wood to save putty and heat.
joint-narrow-flank = Wider tape?
  .text = Only { $flank } of tape lies on bare panel each side of the cove, not { $wanted } as wanted.
joint-heavy-glass = Heavy glass?
  .text = One layer is thicker than the panel. Check the unit of the weights.

# leads to other screens. $joints: of boat-joints
joint-to-run = Do this seam, step by step
joint-to-boat = Add to boat
joint-to-spreader = Spreader template
joint-to-pour =
  .putty = Pour this putty
  .wet-out = Pour the wet-out resin
  .putty-of = Putty of { $joints }
  .wet-out-of = Wet-out of { $joints }

# joints that cannot be. $angle: with its sign, as "90°"
joint-tooling-all = Type less: tooling must leave some of the putty
joint-strip-bare = A reinforcement strip is tape: add a layer
joint-reach-short = Pieces too short: type more than { $least } (overlap plus twice the stagger)
joint-reach-many = With pieces of { $reach } and an overlap of { $overlap }, one layer takes more than { $most } pieces. Type longer pieces, a shorter overlap or a shorter seam
joint-stations-few = Type the angle in at least two places, or choose the same angle everywhere
joint-station-order = Stations out of order: type a distance beyond the station before
joint-angle-flat = The inside angle must be less than 180°. Type it for an outside corner too. For panels in line choose a butt joint
joint-angle-narrow = Below { $least }° no spreader or tape fits the corner. Change the joint or fill it
joint-bulkhead-flat = A bulkhead stands at { $least }° to { $most }° on its panel. For a flatter one choose an inside corner
joint-cove-alone = At { $angle } a cove alone carries nothing. Add a layer of flat tape
joint-tape-narrow = Tape of { $width } is too narrow. A cove of radius { $radius } at { $angle } needs at least { $needs }
joint-room-little = Too little room: at { $angle } the smallest cove takes { $takes } of each panel
joint-radius-large = Radius too large: at { $angle } the cove reaches { $reaches } up each panel, and { $free } is free. Type at most { $most }
joint-opening-wide = Opening too wide: at { $angle } it is { $opening }, and the cove reaches { $reaches } up each panel. Close it, back it with wood or use a larger radius
joint-edges-overlap = Bevel each edge at least { $cut }° at { $angle }, so that outer corners can touch. Square edges would overlap by { $overlap }
joint-rounding-through = At { $angle } this rounding breaks through to the inside. Type less than { $most }
joint-tape-short = Tape of { $width } does not reach round the edge at { $angle }. Use at least { $least }


## Surfaces: coats, cloth, glue, fairing

surface-work = What to do
  .coat = coat
  .sheathe = sheathe with cloth
  .fair = fair
  .scarf = glue a scarf
  .laminate = glue a lamination
  .gap = glue edges or a gap
  .fillet = fillet without tape
surface-faces = Faces
  .no-size = Type length and width, or the area
surface-face = Face
surface-length = Length
surface-widths = Width or girth
  .help = If it changes, several at equal distances: 0.4 : 1.2 : 0.9
surface-area = Area, if known
  .help = Replaces both.
surface-count = How many
  .help = Count each side.
surface-lie = How it lies
  .level = level
  .leans = leaning
  .upright = upright
  .under = overhead
surface-wood = Surface
  .bare = bare wood
  .sealed = sealed or coated
surface-fold =
  .amounts = Amounts
  .clock = Hours and pace
  .edges = Edges and end grain
surface-pots = Pots for one coat
  .cloth = Pots for the wet-out
  .fair = Batches
  .text = { $count ->
      [one] { $count } pot of { $mass }
     *[other] { $count } pots of { $mass } each
    }
  .by-heat = so that no cup holds { $mass } or more
  .by-film = laid while the film can be worked: { $time }
  .caution = Pour each pot out at once. Left in cup or tray, it heats up and can smoke.
surface-reach = One pot reaches
  .rough = at this pace (our own judgement). Type your own.
surface-no-pot-life = No pot life known
  .text = Type the label's pot life, mass and temperature in the resin system.
surface-area-line = Area of all faces
  .rough = trapezoidal rule between widths, flat along the length
surface-stays = Stays on the boat
  .rough = rounded up, without spare, tools and tray
surface-to-pour =
  .pot = Pour one pot
  .all = Pour all of it in one pot
  .neat = Pour the neat resin
  .glue = Pour the thickened glue
  .batch = Pour one batch
surface-to-sanding = Before sanding
surface-to-joint = Draw it as a joint
coats-count = Coats
coats-tool = Tool
  .roller = roller
  .brush = brush
coats-edge-length = Open edges, length in all
coats-edge-thickness = Edge thickness
coats-soaks = An edge, times as much as a face
coats-day-from = Work begins
coats-day-until = Work ends
  .early = Work ends: must come after it begins
coats-pace = Time to coat { "1 m2" }
coats-first = First coat on bare wood
coats-later = Each later coat
coats-brush = Left in the brush
coats-tray-area = Wetted area of the tray
coats-mix = Resin for all coats
  .rough = with spare, tool and tray, rounded up. Wood differs: { $first } first, { $later } later.
coats-first-mix = First coat
  .rough = to mix, rounded up (from memory). Weigh the first one and type it.
coats-later-mix = Each later coat
coats-film = Film of a later coat
  .rough = nothing evaporates from solvent-free resin
coats-heaviest = Heaviest coat that stays
  .rough = rounded down (flow from memory, half of it used). Thick resin bears more, thin resin less.
coats-three = Three coats, not two
  .text = Roll three on bare wood that will be wet: pinholes of one coat are closed by the next (common practice).
coats-whole = Film in all, at least
  .rough = what soaks into bare wood not counted
coats-edge = Area of the edges
coats-left = Left in tool, tray and cups
  .rough = each coat is a session of its own (from memory)
coats-lasts = One coat takes
  .rough = its pots mixed one after the other, rounded up
coats-rising = Coat on a falling temperature
  .text = Bare wood that warms up blows bubbles. Begin in the shade, late in the day.
coats-runs = This coat runs
  .text = Roll no more than { $heaviest } here, in more coats.
coats-cold = Too cold
  .text = Warm the wood first: below { $lowest } this hardener may never cure.
coats-sand = Sand between two coats
  .text = The time without sanding ends before you are back. Wash with water, let dry, sand dull, then coat.
coats-no-window = No clock for these coats
  .text = Type the hardener's speed or the label's recoat hours, and working hours longer than one coat takes.
coats-today = Coats that fit today
  .text = { $today } of { $count }
  .rough = if each starts as early as it can, at one temperature
coats-start = Start coat { $place }
  .text = from { $earliest } until { $latest }
  .sand = from { $earliest }, washed and sanded first
  .rough = Press a gloved thumb on it: it must hold the next coat and still dent. The label comes first.
sheathing-fold =
  .glass = Glass and resin
  .cloth = Strips and laps
  .weave = Filling the weave
sheathing-cloth-weight = Dry cloth weight
sheathing-cloth-width = Cloth width
  .narrow = Too many strips. Type a wider cloth.
sheathing-cloth-layers = Layers of cloth
sheathing-ply-wanted = over the cloth
sheathing-way = Strips run
  .fewest = across if a tenth less
  .along = along the length
  .across = across the length
sheathing-lap = Lap of two strips
  .wide = Lap of two strips: less than half of the cloth's width
sheathing-edge-spare = Cloth over each edge
sheathing-glass-share = Glass by weight
  .help = Our own judgement: { $buying } for buying, less overhead.
sheathing-glass-volume = Glass by volume, if known
  .help = Used instead of glass by weight.
sheathing-drinks = Bare wood under the cloth takes
sheathing-weave-depth = Depth of the weave
  .help = If empty: { $share } of the thickness of one layer (our own judgement, { $range }).
sheathing-weave-empty = Share of that depth without glass
sheathing-sanded-off = Left above the glass to sand
sheathing-fill-coat = Fill coat, at the most
sheathing-wet-pace = Time to wet out and squeegee { "1 m2" }
sheathing-dry = Seal the wood first
  .text = Cloth laid dry on bare upright wood starves. Coat first, lay the cloth into it while it is tacky.
sheathing-mix = Resin for all of it
  .rough = wet-out, weave, spare and leftovers, rounded up (from memory and our own judgement)
sheathing-cloth = Cloth
  .rough = all layers with laps and edges, rounded up
sheathing-fill = Fill the weave
  .text = { $count ->
      [one] { $mass } in { $count } coat of { $each }
     *[other] { $mass } in { $count } coats of { $each }
    }
  .rough = above level: sanding takes { $sanded } off, or it cuts glass (our own judgement)
sheathing-stays =
  .rough = glass and resin, less what is sanded off, rounded up
sheathing-pour-out = Pour the pot onto the cloth
  .text = Do it at once: a film lasts, a pot does not. Squeegee the surplus off, or the cloth floats.
sheathing-ply = Peel ply saves one fill coat
  .text = It also saves the wash, and takes resin into the bin.
sheathing-deep-weave = Is the weave deeper than the cloth?
  .text = It is more than the thickness of all layers. Check its unit.
sheathing-strips = Strips on face { $place }
  .no-join = no join
  .joins = middle of each lap from the first edge: { $joins }
sheathing-glass = Glass laid
sheathing-wet =
  .rough = { $share } glass by weight
sheathing-drinks-line = Resin into bare wood
sheathing-thick = Laminate thickness
sheathing-depth = Depth of the weave
  .rough = our own judgement where you typed none
sheathing-lapped = Area of the laps
sheathing-drawing = Strips of cloth
  .told = { $count } strips of cloth. They lap at { $joins } from the first edge.
  .told-one = One strip of cloth.
fairing-depths = Readings under the batten
  .help = Spread over the face, high places as 0: 0 : 1.5 : 2. Used instead of the depth.
fairing-depth = Mean depth
fairing-light = Fairing filler
  .dry = no liquid would be left between the grains: { $share } of the volume, at most { $most }
fairing-sanded = Sanded off again
fairing-dust = Dust when sanding
  .text = Wear a particle mask and goggles, and draw the dust off. Sand only what has cured hard.
fairing-placed = Compound to place
  .rough = all passes, with what sanding takes, rounded up (filler from memory)
fairing-mix = Resin in it
  .rough = with spare, rounded up. Filler: { $filler } for what is placed.
fairing-pots =
  .caution = Spread each batch at once. Light compound keeps its heat in.
fairing-passes = Passes
  .rough = at the deepest place, at most { $most } each (our own judgement)
fairing-stays =
  .rough = rounded up. Sanded off: { $sanded }.
fairing-heavy = Is this filler for fairing?
  .text = It carries load, is heavy and hard to sand.
fairing-dark = No dark paint over this
  .text = Phenolic balloons soften in full sun (common practice). Paint white or light.
fairing-never = Never under tape
  .text = Compound carries nothing: no cove, no glue, no fastening of it.
fairing-mean = Mean depth
  .read = mean of your readings
  .typed = as in the form
fairing-density = Density of the compound
  .rough = by the volumes of resin, filler and air
gluing-fold =
  .bond = Glue, strength
  .clamps = Clamps
gluing-thickness = Thickness of one layer
gluing-width = Width of a layer
gluing-scarf-width = Width of the panel
gluing-scarf-of = Material
  .ply = plywood
  .wood = solid wood
gluing-ratio = Scarf ratio, to 1
  .help = Plywood { $ply } (common practice). Solid wood { $wood } or flatter (published).
gluing-piece =
  .short = The scarf is longer than this piece
gluing-piece-one = First piece, length
gluing-piece-two = Second piece, length
gluing-strips = Layers
gluing-length = Length
gluing-bend = Wanted radius of the bend
  .help = Empty: straight.
gluing-to-hull = Glued to the hull too
  .no = no
  .yes = yes
gluing-gaps = Gap
  .help = If it changes, several at equal distances: 0.5 : 2
gluing-gap-depth = Depth of the edge
gluing-copies = How many
gluing-prime = Neat resin on each face
gluing-end-prime = End grain, times as much
gluing-bond-line = Thickness of the glue line
gluing-squeezed = Squeezed out
gluing-soak = Wait after priming
gluing-panel-strength = Strength of the panel in bending
  .help = Default: the stronger value of a published table, { $range }. Across the face grain it is weaker.
gluing-pressure = Pressure on the bond
gluing-clamp = One clamp presses with
gluing-apart = Clamps apart, at the most
gluing-mix = Resin for all of it
  .rough = priming and glue with spare and cup, rounded up (our own judgement)
gluing-neat = First neat, on both faces
  .rough = end grain gets more. Brush again where it turns dull, but never wait until it skins.
gluing-glue = Then thickened, until it clings
  .stands = Then putty, until it stands
  .rough = on one face, with what is squeezed out, rounded up
gluing-stays =
  .rough = priming and glue line, rounded up
gluing-bond = Bonded area
gluing-resin = Resin in the thickened glue
  .rough = wood flour for filler (from memory)
gluing-lightly = Clamp lightly
  .text = Press until a bead shows all along. Hard clamping starves an epoxy joint (common practice).
gluing-steep = Too steep a scarf
  .text = Cut it at least { $wanted } to 1.
gluing-wide = Too wide for glue
  .text = Above { $gap } use putty that stands, and back the gap (our own judgement).
gluing-tight = Layers may crack
  .text = The bend is less than { $times } times one layer's thickness (our own judgement). Use thinner layers, or try one dry.
gluing-two-pots = Mix two pots
  .big = { $mass } or more in one cup can smoke. Mix the neat resin first, the glue after the wait, in several cups.
  .text = Priming, waiting and spreading take { $needed }, the cup lasts { $lasts }. Mix the glue after the wait.
gluing-bevel = Length of the bevel
gluing-joined = Joined length
  .rough = rounded down, untrimmed
gluing-shear = Shear in the bond
  .rough = when the panel breaks: what the glue must carry. An estimate, not an approval.
gluing-pull = Pull across the bond
gluing-butt = Ends butted, not scarfed
  .text = They reach about { $share } of the wood's strength. A scarf wants { $times } times the section in glue (published).
gluing-plans = Plans and class rules come first
  .text = Glue one test piece and break it. Epoxy joints lose strength in heat and wet.
gluing-clamps = Clamps
  .rough = at least, with a batten under them (our own judgement)
gluing-lines = Glue lines
gluing-former = Radius of the former
  .rough = counts the least springback: equal layers, stiff glue. Soft or warm glue springs back more: try one.
gluing-strain = Stretch of the outer fibres
gluing-one-pot = One pot does both
  .text = prime from it, thicken the rest: { $needed } of { $lasts }
  .rough = from mixing until the glue is spread. A smaller rest lasts longer.
fillets-panel = Thickness of the standing panel
fillets-face-pull = Face veneer pulls off at
fillets-radius = Radius, on the side of { $angle }
  .both = Radius, on both sides
  .rough = { $times } times the panel, rounded up. Common practice: { $low } to { $high } times. An estimate, not an approval.
fillets-putty =
  .rough = both sides, with what tooling takes off, rounded up
fillets-foot = Fillet reaches up each face
fillets-model = How it was reckoned
  .text = The foot carries in bending what the panel carries, until the face veneer pulls off at { $pull } (our own judgement).

## Boat

boat-fold =
  .phase = In the order of building
  .faces = Coats, cloth and glue
  .stock = Rolls and remnants
  .work = Work settings
  .buy = Shopping list
  .cut = Cut list
  .joint = Joint by joint
  .wall = Wall cards
boat-joints = Joints
  .none = No joints yet. Add the first joint. Other entries stay
boat-surfaces = Faces, glue and fairing
# .nth: how one without a name is called. $work: what is done to it
boat-surface = Face or glue line
  .nth = { $count }: { $work }
# .nth: how a joint without a name is called. What is said of one stands side by side with commas
boat-joint = Joint
  .nth = Joint { $count }
  .now = in the next batch
  .radii = R { $radii }
  .flat = flat tape
  .putty = { $putty } putty in place
  .tape = { $tape } tape
  .copies = all copies
  .capped = limited by the tape
  .width = by the width of the cove
  .flank = only { $flank } of tape on bare panel each side
# $joint: its name; $why: a sentence of its own
boat-joint-refused = { $joint }: { $why }
boat-joint-name = Name
boat-joint-angle =
  .help = One, or several along the seam: 95 : 120 : 150
boat-joint-length = Length
  .help = Total, or each stretch between the angles: { "0.8 : 1.4 m" }
  .stretches = type one length, or one for each stretch between angles
boat-joint-gap = Gap
boat-joint-copies = How many
boat-joint-width = Tape width
  .help = One for all layers, or one for each: { "75 : 100 mm" }
# each, in and out are typed as they stand here, in all languages
boat-joint-faces = Faces of the layers
  .help = For each layer type each, in or out: each : out. If empty: each.
  .words = type each, in or out for each layer, with colons between
boat-joint-strip-bare = a reinforcement strip is tape, add a layer
boat-joint-radius =
  .help = If empty: by the throat rule.
boat-pour = Next batch
  .later = not included
  .now = included
  .none = To pour joints together, open each and choose “included”. One tap then takes them to Pour.
boat-system = Resin system
boat-packs-sold = Resin pack sizes
  .help = Each with hardener in ratio.
  .wide = Resin pack sizes: the largest is more than { $most } times the smallest. Leave one out
boat-prices = Price of each pack
  .help = In the order of the sizes, hardener counted.
  .many = Type as many prices as pack sizes
boat-people = People
boat-temperature = Wood and air temperature
  .help = For counting batches. If empty: { $warmth }.
boat-most = Largest mix wanted
  .little = Largest mix wanted: type more than what bag and cup keep
boat-filler-dose = Filler per { "100 g" } of epoxy
boat-roll = Tape and cloth roll length
boat-ply-roll = Peel ply roll length
boat-remnants = Remnants at hand
boat-remnant = Remnant
boat-remnant-length = Length
boat-remnant-name = Name
boat-least = Smallest cove radius
boat-reach-long = Pieces cannot be longer than a roll of { $what }

# more than one answer takes. $joint: the one that counts most
boat-thousands = { $thousands },{ $rest }
boat-many-angles = { $joint }: all joints have { $count } angles, at most { $most } fit. Type fewer along a seam, or split the boat into two
boat-many-pieces =
  .copies = { $joint }: all joints make { $count } pieces of tape and peel ply, at most { $most } fit. Type fewer copies, or split the boat into two
  .length = { $joint }: all joints make { $count } pieces of tape and peel ply, at most { $most } fit. Type a shorter seam, or split the boat into two
boat-many-faces =
  .copies = { $joint }: all joints make { $count } faces to work on, at most { $most } fit. Type fewer copies, or split the boat into two
  .length = { $joint }: all joints make { $count } faces to work on, at most { $most } fit. Type a shorter seam, or split the boat into two
boat-many-rolls = { $length } of { $what } needs more than { $most } rolls of { $roll }. Type longer rolls, or split the boat into two

boat-batches = To mix
  .text = { $count ->
    [one] { $count } batch
   *[other] { $count } batches
  }
# by what the batches are counted; .coats and .warmth follow the first with a comma, .surplus with a semicolon
boat-counted =
  .plan = { $count } by the seam plan
  .mass = no plan covers all seams: by the largest mix
  .coats = coats by weight
  .warmth = at { $warmth }
  .surplus = { $surplus } more than needed, as the scale cannot measure a smaller batch accurately
  .surfaces = { $count } for faces and glue
boat-putty = Putty for coves, in all
  .rough = { $count ->
    [one] { $count } batch, rounded up, with losses and spare
   *[other] { $count } batches, rounded up, with losses and spare
  }
boat-added =
  .rough = putty, glass and resin in place, without waste
boat-seams = Seams in all
  .rough = { $count ->
    [one] { $count } seam, all copies
   *[other] { $count } seams, all copies
  }
# $dose: parts by weight to 100; $doubt: percent, without the sign
boat-filler = Filler
  .rough = { $dose } per 100 of epoxy by weight, ±{ $doubt }% (from memory), rounded up, with { $spare } spare
# which joints: behind "Putty of"
boat-chosen = { $count ->
    [one] { $count } joint
   *[other] { $count } joints
  }
  .all = all joints
boat-mixed = Epoxy to mix, in all
  .rough = { $putty } in putty, { $liquid } as liquid, plus { $spare } spare
  .surfaces = { $seams } for the seams, { $surfaces } for faces and glue, with spare
# .and: names of the parts of a label, one after the other: "Resin and hardener"
boat-resin = Resin to buy
  .and = { $parts } and { $part }
  .rough = by the label's ratio, rounded up, with { $spare } spare
  .rough-doubt = by the label's ratio ({ $doubt }), rounded up, with { $spare } spare
# $parts: "5 kg + 1.5 kg"; $part: the name of the first of them
boat-packs = Packs
  .each = { $count } × ({ $parts })
  .rough = pairs in ratio, least left over: { $over } of { $part }
  .none = None: what is on the shelf is enough
boat-shelf = On the shelf, not to buy
  .rough = mixes { $mixes }
  .rough-day = mixes { $mixes }, use it by { $day }
boat-cost = Cost of these packs
  .rough = { $boat } on the boat, { $waste } in cups, tools and spare, { $left } left over
boat-cheapest = Cheapest packs
  .rough = cost { $cost }, { $over } of { $part } left over
# how a tape is cut: the parts stand side by side with a semicolon
boat-ply =
  .pieces = { $count ->
    [one] { $count } piece
   *[other] { $count } pieces
  }
boat-from-rolls = { $count ->
    [one] { $count } roll, { $length } cut from it
   *[other] { $count } rolls, { $length } cut from them
  }
  .none = no roll to open
  .least = search stopped early: at least { $count } needed
  .saved = search stopped early: at most { $length } could still be saved

# what else is bought
boat-gloves = Gloves
  .text = { $count ->
    [one] { $count } pair
   *[other] { $count } pairs
  }
  .rough = people × (batches + 1), double for two pairs at once
boat-bags = Bags for putty
  .rough = one for each batch of putty
boat-cups = Cups
boat-sticks = Mixing sticks
boat-mix-each = one for each mix
boat-tray = Tray film
  .text = { $count ->
    [one] { $count } sheet
   *[other] { $count } sheets
  }
  .rough = one for each batch of wet-out resin
boat-brushes = Brushes or rollers
  .rough = one for each batch of liquid
boat-blanks = Spreader blanks
  .rough = one for each cove radius, to the millimetre
boat-backing = Backing tape
  .rough = behind every gap, plus { $more }%
boat-ties = Ties
  .rough = one every { $each } of seam ({ $mark })
boat-abrasive = Abrasive sheets
  .rough = one for { $tape } of tape ({ $mark })
boat-cartridges = Respirator filters
  .text = { $count ->
    [one] { $count } set
   *[other] { $count } sets
  }
  .rough = one for each person. Vapour and dust need different filters: see Safety.
# .text: "R 12, R 15 mm"
boat-spreaders = Spreaders to cut
  .each = R { $radius }
  .text = { $radii } { $unit }
  .rough = the cove at each station, to the nearest millimetre

# what is done to a boat one after the other, and what each takes; .light: how much filler for fairing
boat-phase =
  .glue = Glue
  .tack = Tack
  .inside = Inside seams
  .outside = Outside seams
  .sheathe = Sheathe
  .fair = Fair
  .seal = Seal, first coat
  .coat = Coat
  .resin = Epoxy
  .putty = Putty
  .glass = Glass
  .light = for all the compound mixed, by weight
boat-saved =
  .cloth = Lighter without the cloth
  .coat = Lighter without the last coat
  .fairing = Lighter without fairing
  .rough = less weight on the boat
# what a joint takes, on a card: the parts stand side by side with a semicolon. $numbers: of the pieces
boat-wall =
  .putty = putty to place { $putty }
  .resin = resin for tape { $resin }, cup, roller and spare not counted
  .spreader = spreader { $radii }
  .tape = tape { $width }: { $numbers }
boat-plan = Plan these seams
  .insides = Plan the insides
  .outsides = Plan the outsides, hull turned
  .faces = Plan coats and cloth
  .part = { $plan }: pieces { $first } to { $last } of { $all }
# the joints of the boat that an empty form shows
demo-boat =
  .keel = Keel
  .chine = Chine
  .transom-bottom = Transom to bottom
  .transom-side = Transom to side
  .bow-transom = Bow transom
  .middle-bulkhead = Middle bulkhead
  .fore-bulkhead = Fore bulkhead
  .side-butt = Side panel butt
  .skeg = Skeg strip
  .gunwale = Gunwale scarf
  .seats = Seat fillets
  .cloth = Bottom cloth
  .fairing = Bottom fairing
  .coats = Inside coats


## Cutting

cut-roll = Roll { $count }
cut-remnant = Remnant of { $length }
  .named = { $name }, { $length }
  .nth = Remnant { $count }
  .left = Rest of { $remnant }
  .rough = { $used } of { $length } cut off
  .untouched = not cut
# $what: one of row-roll; $stock: cut-roll, cut-remnant, or its name and length
cut-from = { $what }: { $stock }
  .rough = pieces in laying order, { $left } left
# $length: "2 × 1.55 m"; $numbers: of the pieces, "1 to 4, 7"
cut-pieces = { $length }: { $numbers }
cut-numbers = { $first } to { $last }
cut-left = { $length } left
cut-strips = { $count ->
    [one] { $what }: { $count } piece. The list below shows where it is cut.
   *[other] { $what }: { $count } pieces. The list below shows where each is cut.
  }


## Drawings

sheet-tape = tape { $width }
  .none = No tape.
  .told = Tape { $widths } wide, drawn thicker than it is.
section-across = Across the seam
section-along = Along the seam
  .told = Sections along the seam, all to one scale: { $stations }.
# one of the sections along the seam. $at: how far along, $angle: with its sign
section-station =
  .cove = at { $at } { $angle }, radius { $radius }
  .flat = at { $at } { $angle }, flat tape
  .short = flat
# what stands in the drawing beside its lines: short
section-radius = R { $radius }
section-throat = throat { $length }
section-tack = tack { $length }
section-gap = gap { $gap }
# the drawing in sentences. $angle: without its sign
section-inside-up = Section to scale, the inside up.
section-corner = To scale: putty crossed, tape dashed
  .told = Two panels { $thickness } thick meet at { $angle } degrees.
  .apart = Two panels { $thickness } thick meet at { $angle } degrees, { $gap } apart.
section-cove = A cove of radius { $radius } fills the corner, { $throat } deep from the corner, { $tack } up each panel.
  .none = No cove: flat tape alone.
section-outside =
  .round = The outer edge is rounded to { $radius }.
  .flush = The outer edge is filled flush.
  .sharp = The outer edge is filled sharp.
section-flat =
  .apart = Section to scale. Two panels in line, { $thickness } thick, { $gap } apart, the gap filled.
  .butt = Section to scale. Two panels in line, { $thickness } thick.
  .strip = Section to scale. A panel, { $thickness } thick.
# $one, $other: .cove or .flat, for either side
section-bulkhead = Section to scale. A bulkhead { $thickness } thick stands on its panel. On one side { $one }, on the other { $other }.
  .cove = a cove of radius { $radius } at { $angle } degrees
  .flat = flat tape alone at { $angle } degrees
  .measures = { $angle } and { $other }, { $thickness }


## Safety: cautions and what is said of each task

safety-task = Next task
  .any = Any task
safety-powder = Which powder
safety-cured = How cured
  .unknown = Not sure
  .soft = Gummy, or a fingernail marks it
  .hard = Hard, dust is dry
safety-system = Resin system
  .fold = Your product
safety-rest = More about this task
safety-products = Usual hazard codes
safety-first = First of all
  .text = Your product's safety data sheet, local codes and licensed practice come first. These are reminders of what they usually say.
safety-powder-dust = Dust limit, working day
# stands on every screen while nothing more pressing does; short: where little room is left
caution-reminder = Gloves and goggles on before you open a can. The product's data sheet comes first.
  .short = Gloves and goggles on before you open a can.
# a caution in a line: its label, its text
caution-in-place = { $label }. { $text }
# always: those that stand while nothing is asked
caution-always-gloves = Hands
  .text = Wear protective gloves: nitrile, two pairs. Never wear latex as the only barrier. Take a wet or torn glove off at once. How long a glove lasts: see the glove maker's ISO 374 data for this product.
caution-always-sensitise = Skin
  .text = May cause an allergic skin reaction. The allergy stays for life. Wash with soap and plenty of water, never with solvent.
caution-always-skin-first-aid = On the skin
caution-always-eyes = Eyes
  .text = Hardener may cause severe skin burns and eye damage. Goggles on before you open a can.
caution-always-eyes-first-aid = In the eyes
caution-always-air = Air
  .text = Work where air moves through. Keep others and children out. A dust mask does not stop vapour. Inside a hull or tank: only with its own plan and licensed practice.
caution-always-heat = A hot pot
  .text = Mixed resin heats itself. A full cup can smoke, burn and catch fire. Mix only what you can use. Put a hot pot outdoors on bare ground, never under a lid. Spread it thin if it still flows.
caution-always-dust = Dust
  .text = Powder or sanding dust: wear a particle mask (EN 149 FFP2 or FFP3, or 42 CFR 84 N95 or better). Never sand epoxy that is not fully cured.
caution-always-waste = Leftovers
  .text = Spread leftovers thin outdoors to cure. Dispose of contents and container by local rules. Avoid release to the environment.
# cautions of the moment. short: room for one sentence; in-sun: where the sun shines on it. $signal: Danger or Warning;
# $code: H330; $official: the official statement without its point
caution-hot-now = The pot is hot
  .text = Take it outdoors now, onto bare ground, spread thin if it still flows, never under a lid.
caution-hull = Inside the hull
  .text = Enter only with air led in, air tested, someone outside and licensed practice.
caution-poison = { $signal }: your product, { $code }
  .text = { $official }.
caution-asthma = { $signal }: your product, { $code }
  .text = { $official }.
caution-eyes = Goggles on: { $code }
caution-vapour = Solvent vapour
  .text = No flame, no spark, air moving through. See how many grams this room takes.
  .short = No flame, no spark, air moving through.
caution-uncured = Not cured
  .text = Do not sand yet: dust of uncured epoxy can make you allergic.
caution-big-pot = A big batch
  .text = { $amount } in one cup can smoke. Split it, or spread it in a tray at once.
  .short = { $amount } in one cup can smoke.
  .in-sun = { $amount } in one cup can smoke. Split it, or spread it in the shade.
caution-warm-pot = Warm today
  .text = At { $temperature } a cup of { $amount } overheats sooner. Mix less and spread it at once.
  .short = At { $temperature } a cup of { $amount } overheats sooner.
  .in-sun = At { $temperature } a cup of { $amount } overheats sooner. Mix less and spread it in the shade.
caution-hot-pot = This pot can overheat
  .text = { $amount } left in one pot can smoke and burn. Use it up, or spread it in a tray at once.
  .short = { $amount } left in one pot can smoke and burn.
  .left = { $amount } left together can smoke and burn.
  .in-sun = { $amount } left in one pot can smoke and burn. Use it up, or spread it in the shade.
caution-in-sun = In the sun
  .text = Move it into the shade, then spread it thin. A thin layer in the sun stiffens sooner than a cup in the shade.
  .short = Move it into the shade, then spread it thin.
caution-short-pot = Little time
  .text = About { $minutes } in the cup. Lay everything out first, then mix.
  .short = About { $minutes } in the cup.
# $filler: the powder's name
caution-powder = { $filler }
  .text = Particle mask and goggles on before you open the bag.
  .short = Particle mask and goggles on before you open the bag.
  .other = Powder
  .unnamed = Powder
caution-sanding = Dust
  .text = Wear a particle mask and extract dust at the tool.
caution-lasting = { $signal }: your product, { $code }
  .text = { $official }.
caution-corrosive = { $signal }, goggles on: { $code }
  .text = { $official }.
# $room: its volume; $changes: its air changes
caution-small-room = Little air
  .text = { $room } with { $changes } air changes an hour: open the room on two sides before you open a can.
caution-thick = Thick layer
  .text = Putty { $depth } deep heats itself on the boat too. Apply it in two passes.
  .short = Putty { $depth } deep heats itself on the boat too.
caution-cold = Cold
  .text = Warm the cans in warm water, never by a flame. Keep heaters with a flame away from them.
  .short = Warm the cans in warm water, never by a flame.
caution-blush = Wash first
  .text = Wash the greasy film off with water and a pad before you sand: sanded in, it stays.
caution-gloves = Gloves
  .text = Wear two pairs, and goggles. Take a wet or torn glove off at once.
  .short = Wear two pairs, and goggles.
caution-wash = A drop on the skin
  .text = Stop and wash with soap and plenty of water. Never solvent.
  .short = Stop and wash with soap and plenty of water.
# from where a caution stands: rows of a table
caution-from-big = Big mass in one cup
caution-from-big-warm = Big mass in one cup on a warm day
caution-from-runs-away = Peak temperature of a pot that overheats
caution-from-least-peak = Smallest mass with its peak temperature shown
caution-from-warm = Warm air
caution-from-cold = Cold air
caution-from-hot = Hot pot
caution-from-short = Short usable time
caution-from-few-changes = Few air changes
caution-from-small-room = Small room
caution-from-thick = Thick putty
# the tasks, and what is said of them by topic
task-open = Opening and measuring
task-mix = Mixing
task-powder = Adding powders
task-lay = Laying and rolling
task-confined = Inside a hull or confined space
task-wipe = Wiping with solvent
task-clean = Cleaning tools
task-peel = Peeling and washing
task-sand = Sanding
task-hot = A hot pot
task-leftover = Leftovers
task-waste = Waste
task-spill = Spills
task-fire = Fire
topic-have = Have ready
topic-hands = Hands
topic-eyes = Eyes
topic-breathing = Breathing
topic-skin = Skin
topic-clothes = Clothes
topic-air = Air
topic-fire = Fire
topic-others = Bystanders and children
topic-never = Never
topic-aid = First aid
topic-stop = When to stop
# what to do: a sentence or more about one topic of one task
do-open-have = Gloves, goggles, soap and water, paper towels, a bag for waste.
do-open-eyes = Hardener may cause severe skin burns and eye damage. Open the can away from your face.
do-open-stop = Do not open a can that bulges, leaks or has lost its label.
do-mix-have = A tray or bare ground outdoors for a hot pot, and a clear way to it.
do-mix-fire = Mixed resin heats itself. Mix only what you can use. Get it out of the cup soon.
do-mix-never = Never change the ratio for a faster or slower cure.
do-mix-stop = If the cup feels warm before you are done, spread the batch out now.
do-powder-have = Mask on. Scoop, lid and a damp cloth for spills at hand.
do-powder-air = Point no fan at the powder. Add it slowly from close above, fold it in, then air the room.
do-powder-eyes = Powder flies up when you pour it. Wear goggles, not glasses.
do-powder-breathing = Do not breathe dust. A half mask that fits is rated to let at most a tenth through.
do-powder-fire = Wood dust can burn. Keep sparks away.
do-powder-never = Never blow powder away. Never sweep it dry.
do-powder-stop = Stop when dust hangs in the light or the mask gets hard to breathe through.
do-lay-have = More spare gloves than you think. A place to drop wet things.
do-lay-eyes = Rollers spit. Wear goggles or side shields, above all overhead.
do-lay-clothes = Long sleeves, an apron or a coverall, knees and hair covered.
do-lay-never = Never kneel or lean in wet resin. Never answer the phone with a wet glove.
do-lay-stop = Resin that pulls strings, warms up or drags is setting. Stop there. Never thin it.
do-confined-first = Do not go in without a written plan, a way to pull you out, a trained person outside who stays and never follows you in, and licensed practice where the law asks for it.
do-confined-tested = Test the air before entry, in this order: oxygen, flammable vapour, toxic vapour. Oxygen must be from 19.5 up to 22%, flammable vapour under a tenth of its lower explosive limit.
do-confined-air = Vapour is heavier than air and lies in the bilge. Lead air in by hose to where you breathe, and out at the lowest place, all the time.
do-confined-breathing = A filter mask does not protect where air may lack oxygen or vapour may build up. You need supplied air and training.
do-confined-fire = One spilt cup of solvent can fill a hull with vapour. No solvent, no spark, only lamps and tools made for such air.
do-confined-never = Never go in alone or with solvent. Never go in after somebody who has collapsed: call for help.
do-confined-aid = Somebody collapsed inside: call the emergency number first, blow air in, do not go in.
do-confined-stop = Fan stops, alarm sounds or the person outside has to leave: everybody out.
do-confined-deck = If the work can wait, wait. Or work from outside, through a hatch, with a long handle.
do-wipe-have = A little solvent in a metal can with a lid, cloths, a lidded metal bin outdoors.
do-wipe-hands = Thin nitrile holds ketones (acetone) back for minutes only. Wear the glove the solvent's sheet names. Change it when wet.
do-wipe-eyes = Solvent splashes off a cloth and a brush. Wear goggles.
do-wipe-breathing = Fresh air comes before a mask. Let it carry the vapour away.
do-wipe-skin = Solvent takes the fat out of skin. Keep it off, above all off bare hands.
do-wipe-clothes = Synthetics can spark: wear cotton. Change wet clothes.
do-wipe-air = Work outdoors if you can. Indoors, see under Air what this room takes: grams and minutes decide.
do-wipe-fire-low = Vapour runs along the floor and can catch fire at a heater, switch or fan motor.
do-wipe-never = Never wipe uncured epoxy off a person or a glove with solvent.
do-wipe-stop = Stop when Air shows the vapour over the limit, or the fan is not running.
do-clean-have = Scrapers and paper first, then as little cleaner as possible.
do-clean-breathing = With the lid on the can and air moving through, usually no mask is worn.
do-clean-never = Never pour cleaner down a drain or on the ground.
do-peel-have = Water, a pad, clean cloths, thick gloves, a bag for the peel ply.
do-peel-hands = Leather or thick work gloves for cut glass edges, waterproof ones for washing.
do-peel-eyes = Cured splinters fly when peel ply tears off. Wear goggles.
do-peel-breathing = Washing wet needs no mask. Sanding afterwards needs one.
do-peel-skin = The greasy film is amine blush. Wash it off the work and off you, with water.
do-peel-never = Never sand blush in. Wash it off with water first.
do-peel-stop = If it is tacky under the peel ply, leave it to cure.
do-sand-unsure = Not sure it is cured? Press a fingernail in and sand one stroke. If the nail leaves a mark, or dust clumps and clogs, wait.
do-sand-soft = The dust of uncured epoxy can make you allergic. Do not sand it. Warm it, wait, or scrape it in curls.
do-sand-hard = Stop where dust clumps, the paper clogs or it smells: that patch is not cured.
do-sand-have = A vacuum on the tool, or water and wet paper. A mask. Clothes to leave behind.
do-sand-hands = Wear nitrile gloves, cuffs under the sleeves. Nothing loose near a turning disc.
do-sand-eyes = Glass and epoxy dust scratch. Wear goggles that seal.
do-sand-skin = Sleeves down and closed at the wrist, neck covered. Then cold water and soap before you touch your face.
do-sand-clothes = Wear a coverall that stays in the workshop. Vacuum it, never beat or blow it.
do-sand-air = Extract the dust at the tool. Blow what the fan catches outdoors, away from people.
do-sand-fire = Wood dust can burn. Empty the bag outdoors, away from sparks.
do-sand-never = Never make dust of uncured epoxy.
do-gloves-pair = Wear two pairs of nitrile. Change the outer pair at once when wet or torn, and at the glove maker's times.
do-gloves-type = Types A, B and C say how many of 18 test chemicals a glove holds back, and how long. No epoxy is among the 18. Ask the glove maker about resin and hardener.
do-goggles = Put on goggles that close at the sides before the first lid is off.
do-skin-wash = A drop on the skin: stop, wash with soap and plenty of water, then go on.
do-skin-covered = Sleeves down, wrists covered. Keep the back of the glove off your face.
do-vapour-mask = A dust mask does not stop vapour. With air moving through, usually no mask is worn.
do-vapour-amine = Hardener vapour can harm lungs and passes through skin. The limit is 1 ppm for diethylenetriamine over a working day, 0.1 mg/m³ for m-xylylenediamine at any moment. A hardener with no known limit can be as bad.
do-vapour-filter = If the sheet asks for a vapour filter: type A is for organic vapour that boils above { "65 degC" }, AX for below (acetone), K for ammonia and its organic derivatives.
do-dust-mask = Put on a particle mask before there is dust: EN 149 FFP2 or FFP3, or 42 CFR 84 N95 or better.
do-mask-fit = A mask works only if it seals. With a beard it does not.
do-air-through = Open doors and windows on two sides, air at your back.
do-no-flame = No flame, no heater with a flame and no smoking where you work.
do-others-away = Keep children, pets and onlookers out. Lids on and cups labelled, even for a minute.
do-no-solvent-on-skin = Never use solvent on skin: it carries resin in.
do-no-latex = Never wear latex as the only barrier.
do-no-food = Never eat, drink or smoke near resin. Never mix in a cup somebody might drink from.
do-aid-burn = Hold a burn under cool running water for 20 minutes. Do not pull off what sticks. Get medical help.
do-stop-rash = Itching, a rash, swollen eyes or a tight chest: stop for today and get medical help. The allergy stays for life.
do-stop-dizzy = A headache, dizziness, or you stop noticing a strong smell: go into fresh air at once.
do-sheet-at-hand = The products' safety data sheets, on paper or on the phone. Their values come first.
do-hot-have = A clear way outdoors, bare ground or a metal tray, a metal bucket, leather gloves, a garden hose.
do-hot-hands = Do not carry a smoking cup in thin gloves: they melt. Use a metal bucket or tongs.
do-hot-eyes = The mix can spit. Goggles on, face turned away.
do-hot-breathing = Do not breathe the smoke. None of your masks is made for it.
do-hot-skin = Hot resin sticks and keeps burning. Keep sleeves down.
do-hot-clothes = Synthetic clothes melt onto skin. If you wear them, keep well back.
do-hot-air = Take the pot out of the room, open doors, stay upwind.
do-hot-fire = Take the pot outdoors onto bare ground, away from everything that burns. If the mix still flows, spread it thin in a tray.
do-hot-others = Everybody out of the smoke. Nobody leans over the pot.
do-hot-never = Never put a lid on a hot pot. Never put it in a bin.
do-hot-stop = If the pot smokes and you cannot carry it at arm's length, leave and call the fire service.
do-leftover-have = A flat tray lined with film, outdoors, under a roof.
do-leftover-fire = In a full cup, leftovers can smoke and burn hours later. Spread them thin outdoors, at most a finger's breadth.
do-leftover-others = Keep leftovers out of reach of children and pets until hard.
do-leftover-never = Never put a lid on leftovers. Never pour them into one cup.
do-leftover-stop = If a tray gets warm, spread it thinner, further from the house.
do-waste-have = A metal bin with a lid outdoors, bags, labels that say what is in them.
do-waste-hands = Touch wet waste only with gloves. Peel gloves off inside out, into the same bag.
do-waste-eyes = Wear goggles to pour and to squeeze out bags.
do-waste-breathing = Against dust, wear a particle mask. Otherwise, outdoors, usually no mask is worn.
do-waste-skin = Afterwards wash hands and arms with soap, up to where the glove ended.
do-waste-air = Sort waste outdoors.
do-waste-fire = Solvent cloths in a heap can catch fire. Dry them flat outdoors, or put them under water in a closed metal bin.
do-waste-never = Never put liquid resin, hardener or solvent in the household bin or drain. Local rules say where it goes.
do-waste-others = Keep waste out of reach of children. Tell whoever takes it away what it is.
do-spill-have = Sand, earth or cat litter, a scraper, bags, soap and water, gloves.
do-spill-air = Open doors and windows first. Solvent spilt indoors: get out, touch no switch until the room is aired.
do-spill-fire = Mixed resin or hardener can heat up in a heap of sawdust or paper. Use sand.
do-spill-stop = If you cannot clean the spill up in a few minutes, or it runs to a drain, call for help.
do-fire-have = A foam, powder or CO2 extinguisher by the door, known to everybody. The emergency number.
do-fire-fire = Small fire, way out behind you: try once to put it out. Otherwise get out, shut the door, call the fire service.
do-fire-breathing = Epoxy smoke is poisonous. Stay low, get out.
do-fire-eyes = Smoke blinds. Know the way out by touch.
do-fire-skin = Clothes on fire: stop, lie down, roll, put water on them.
do-fire-air = Turn the fan off. Shut the doors behind you.
do-fire-others = First get everybody out and count them.
do-fire-never = Never point a water jet at burning solvent. Never go back in.
do-fire-stop = If one extinguisher does not put it out, leave.
# the tables of these sentences, as a builder would look them up
facts-cautions-always = Cautions that always apply
facts-cautions-moment = Cautions of the moment
facts-caution-from = Limits of the cautions
facts-do-wet = What to do: wet epoxy
facts-do-between = What to do: between layers
facts-do-shared = What to do: several tasks
facts-do-trouble = What to do: trouble


## First aid and hazard statements

aid-hot = A pot that smokes or burns
aid-112 = In the EU
  .text = In the EU, call 112 from any phone.
aid-sheet = Follow your safety data sheet first
  .text = These steps are for products that burn skin and eyes, as hardener can.
  .rough = the words of the P codes: { $source }
aid-water = Keep at hand
  .text = Clean water for { $minutes } minutes of rinsing: { $water }.
  .rough = { $source }, rounded up
aid-call = CALL
aid-clothes = CLOTHES
# added to a step
aid-eyes-minutes = Rinse for at least { $minutes } minutes, also on the way to a doctor.
aid-eyes-lids = Hold the eyelids open.
aid-skin-minutes = Rinse for at least { $minutes } minutes.
aid-skin-hardener = Hardener: rinse first, undress under the water, rinse again.
aid-swallowed-rest = Rest. Go to a doctor.
aid-inhaled-upright = Sit half upright. Symptoms may come hours later.
aid-call-doctor = Always see a doctor.
aid-call-label = Have the label and data sheet ready.
smoking-pot-out = Get everybody out and upwind. Do not breathe the smoke.
smoking-pot-carry = If you can still hold the pot: goggles on, leather gloves or tongs. Carry it outdoors, onto bare ground or metal.
smoking-pot-spread = Spread the mix thin while it flows. Never use a lid or a bin.
smoking-pot-water = Never pour water in: the mix can spit. Cold water around the pot, in a metal pail, may slow it.
smoking-pot-leave = If it burns, or smokes and you cannot carry it: leave, shut the door, call the fire service.
smoking-pot-burns = Fight only a small fire, with the way out behind you: powder, foam, carbon dioxide or water spray. Cool nearby cans with water spray.
smoking-pot-watch = Watch the pot for hours, until it is cold.
aid-rinsing-minutes = Rinsing eyes or skin, at least
aid-rinsing-water = Eyewash water in a minute
calls-numbers = Emergency numbers
  .fold = Your emergency numbers
calls-none = No emergency numbers yet
  .text = Add yours in the Kit: ambulance, poison centre, a person. They stay on this phone.
calls-ambulance = Ambulance
calls-poison = Poison centre
calls-person = Your person
# a code of the product's own sheet
own-code = Your product, { $code }
  .rough = from the label, words { $where }
  .unknown = This code is not known here, but kept. Look up its words and sign on the safety data sheet.
  .letters = Its letters are not known here. Look them up on the safety data sheet.
# an official statement that ends without a point
own-code-ended = { $words }.
own-code-others = On other labels: { $words }
own-code-signal = Signal word
# what usual products carry. $codes: H315, H317
usual-product = { $codes }. { $about } Your safety data sheet decides.
  .no-codes = { $about } Your safety data sheet decides.
# what a sign is for who cannot see it
pictogram-told = Red diamond with { $picture }
pictogram-bomb = Exploding bomb, GHS01
  .picture = a bomb that bursts: it can explode
pictogram-flame = Flame, GHS02
  .picture = a flame over a line: it burns
pictogram-oxidiser = Flame over circle, GHS03
  .picture = a flame over a circle: it feeds a fire
pictogram-gas = Gas cylinder, GHS04
  .picture = a gas cylinder: under pressure
pictogram-corrosion = Corrosion, GHS05
  .picture = drops eating into a hand and a bar: it burns skin and eyes
pictogram-skull = Skull and crossbones, GHS06
  .picture = a skull over crossed bones: poisonous in small amounts
pictogram-health = Health hazard, GHS08
  .picture = a person with a star on the chest: lasting harm
pictogram-exclamation = Exclamation mark, GHS07
  .picture = an exclamation mark: irritates, sensitises the skin, or is harmful
pictogram-environment = Environment, GHS09
  .picture = a bare tree and a dead fish: poisonous to water life
usual-resin = Bisphenol-A epoxy resin
  .text = Number average molecular weight up to 700.
usual-hardener = Amine hardener
  .text = Hardeners differ a lot. Some may also cause asthma, H334.
usual-solvent = Solvents for wiping
  .text = Typical of acetone, alcohols and butanone.
usual-powder = Powders
  .text = The dust is the hazard. Most carry no statement.
# the tables of these, and what their rows are called
facts-hazard-statements = Hazard statements
facts-precautions = Precautionary statements
facts-usual-products = What the usual products carry
facts-pictograms = Pictograms
facts-precedence = Which pictogram replaces another
  .every = every exclamation mark
facts-first-aid = First aid, step by step
  .swallowed = Swallowed
  .inhaled = Inhaled
  .call = Call
facts-first-aid-added = First aid, additions
facts-rinsing = First aid, rinsing
facts-emergency = Emergency numbers
facts-smoking-pot = A pot that smokes, step by step
  .out = Out
  .carry = Carry
  .spread = Spread
  .water = Water
  .leave = Leave
  .burns = Burns
  .watch = Watch
# OFFICIAL TEXTS, NEVER EDITED. Hazard and precautionary statements, signal words: UN Globally Harmonized System of
# Classification and Labelling of Chemicals (GHS), Annex 3; those of the EU alone: Regulation (EC) 1272/2008 (CLP), Annex III.
# No translations: another language takes its own official words from Annexes III and IV of the CLP in that language.
ghs-danger = Danger
ghs-warning = Warning
ghs-h222 = Extremely flammable aerosol
ghs-h223 = Flammable aerosol
ghs-h224 = Extremely flammable liquid and vapour
ghs-h225 = Highly flammable liquid and vapour
ghs-h226 = Flammable liquid and vapour
ghs-h227 = Combustible liquid
ghs-h228 = Flammable solid
ghs-h229 = Pressurised container: May burst if heated
ghs-h240 = Heating may cause an explosion
ghs-h241 = Heating may cause a fire or explosion
ghs-h242 = Heating may cause a fire
ghs-h250 = Catches fire spontaneously if exposed to air
ghs-h251 = Self-heating: may catch fire
ghs-h252 = Self-heating in large quantities: may catch fire
ghs-h260 = In contact with water releases flammable gases which may ignite spontaneously
ghs-h261 = In contact with water releases flammable gases
ghs-h270 = May cause or intensify fire; oxidiser
ghs-h271 = May cause fire or explosion; strong oxidiser
ghs-h272 = May intensify fire; oxidiser
ghs-h280 = Contains gas under pressure; may explode if heated
ghs-h281 = Contains refrigerated gas; may cause cryogenic burns or injury
ghs-h290 = May be corrosive to metals
ghs-h300 = Fatal if swallowed
ghs-h301 = Toxic if swallowed
ghs-h302 = Harmful if swallowed
ghs-h303 = May be harmful if swallowed
ghs-h304 = May be fatal if swallowed and enters airways
ghs-h305 = May be harmful if swallowed and enters airways
ghs-h310 = Fatal in contact with skin
ghs-h311 = Toxic in contact with skin
ghs-h312 = Harmful in contact with skin
ghs-h313 = May be harmful in contact with skin
ghs-h314 = Causes severe skin burns and eye damage
ghs-h315 = Causes skin irritation
ghs-h316 = Causes mild skin irritation
ghs-h317 = May cause an allergic skin reaction
  .sentence = May cause an allergic skin reaction.
ghs-h318 = Causes serious eye damage
ghs-h319 = Causes serious eye irritation
ghs-h320 = Causes eye irritation
ghs-h330 = Fatal if inhaled
ghs-h331 = Toxic if inhaled
ghs-h332 = Harmful if inhaled
ghs-h333 = May be harmful if inhaled
ghs-h334 = May cause allergy or asthma symptoms or breathing difficulties if inhaled
ghs-h335 = May cause respiratory irritation
ghs-h336 = May cause drowsiness or dizziness
ghs-h340 = May cause genetic defects
ghs-h341 = Suspected of causing genetic defects
ghs-h350 = May cause cancer
ghs-h350i = May cause cancer by inhalation
ghs-h351 = Suspected of causing cancer
ghs-h360 = May damage fertility or the unborn child
ghs-h360F = May damage fertility
ghs-h360D = May damage the unborn child
ghs-h360FD = May damage fertility. May damage the unborn child
ghs-h360Fd = May damage fertility. Suspected of damaging the unborn child
ghs-h360Df = May damage the unborn child. Suspected of damaging fertility
ghs-h361 = Suspected of damaging fertility or the unborn child
ghs-h361f = Suspected of damaging fertility
ghs-h361d = Suspected of damaging the unborn child
ghs-h361fd = Suspected of damaging fertility. Suspected of damaging the unborn child
ghs-h362 = May cause harm to breast-fed children
ghs-h370 = Causes damage to organs
ghs-h371 = May cause damage to organs
ghs-h372 = Causes damage to organs through prolonged or repeated exposure
ghs-h373 = May cause damage to organs through prolonged or repeated exposure
ghs-h400 = Very toxic to aquatic life
ghs-h401 = Toxic to aquatic life
ghs-h402 = Harmful to aquatic life
ghs-h410 = Very toxic to aquatic life with long lasting effects
ghs-h411 = Toxic to aquatic life with long lasting effects
ghs-h412 = Harmful to aquatic life with long lasting effects
ghs-h413 = May cause long lasting harmful effects to aquatic life
ghs-h420 = Harms public health and the environment by destroying ozone in the upper atmosphere
ghs-euh018 = In use may form flammable/explosive vapour-air mixture
ghs-euh019 = May form explosive peroxides
ghs-euh066 = Repeated exposure may cause skin dryness or cracking
ghs-euh070 = Toxic by eye contact
ghs-euh071 = Corrosive to the respiratory tract
ghs-euh204 = Contains isocyanates. May produce an allergic reaction
ghs-euh205 = Contains epoxy constituents. May produce an allergic reaction
ghs-euh208 = Contains (name of sensitising substance). May produce an allergic reaction
ghs-euh209 = Can become highly flammable in use
ghs-euh210 = Safety data sheet available on request
ghs-euh211 = Warning! Hazardous respirable droplets may be formed when sprayed. Do not breathe spray or mist
ghs-euh212 = Warning! Hazardous respirable dust may be formed when used. Do not breathe dust
ghs-euh380 = May cause endocrine disruption in humans
ghs-euh381 = Suspected of causing endocrine disruption in humans
ghs-euh430 = May cause endocrine disruption in the environment
ghs-euh431 = Suspected of causing endocrine disruption in the environment
ghs-euh440 = Accumulates in the environment and living organisms including in humans
ghs-euh441 = Strongly accumulates in the environment and living organisms including in humans
ghs-euh450 = Can cause long-lasting and diffuse contamination of water resources
ghs-euh451 = Can cause very long-lasting and diffuse contamination of water resources
# hazards of which the standard says the routes together: Annex III of the CLP
ghs-h300-h310 = Fatal if swallowed or in contact with skin
ghs-h300-h330 = Fatal if swallowed or if inhaled
ghs-h310-h330 = Fatal in contact with skin or if inhaled
ghs-h300-h310-h330 = Fatal if swallowed, in contact with skin or if inhaled
ghs-h301-h311 = Toxic if swallowed or in contact with skin
ghs-h301-h331 = Toxic if swallowed or if inhaled
ghs-h311-h331 = Toxic in contact with skin or if inhaled
ghs-h301-h311-h331 = Toxic if swallowed, in contact with skin or if inhaled
ghs-h302-h312 = Harmful if swallowed or in contact with skin
ghs-h302-h332 = Harmful if swallowed or if inhaled
ghs-h312-h332 = Harmful in contact with skin or if inhaled
ghs-h302-h312-h332 = Harmful if swallowed, in contact with skin or if inhaled
# precautionary statements. other: as it stands on labels of another revision of the GHS. when, do: the statement in two, with what a label leaves open ([or shower], /...) chosen
ghs-p210 = Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.
ghs-p260 = Do not breathe dust/fume/gas/mist/vapours/spray.
ghs-p261 = Avoid breathing dust/fume/gas/mist/vapours/spray.
ghs-p264 = Wash ... thoroughly after handling.
ghs-p271 = Use only outdoors or in a well-ventilated area.
ghs-p272 = Contaminated work clothing should not be allowed out of the workplace.
ghs-p273 = Avoid release to the environment.
ghs-p280 = Wear protective gloves/protective clothing/eye protection/face protection/...
ghs-p302-p352 = IF ON SKIN: Wash with plenty of water/...
  .other = IF ON SKIN: Wash with plenty of soap and water.
ghs-p304-p340 = IF INHALED: Remove person to fresh air and keep comfortable for breathing.
  .other = IF INHALED: Remove victim to fresh air and keep at rest in a position comfortable for breathing.
  .when = IF INHALED
  .do = Remove person to fresh air and keep comfortable for breathing.
ghs-p305-p351-p338 = IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.
  .when = IF IN EYES
  .do = Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.
ghs-p301-p310 = IF SWALLOWED: Immediately call a POISON CENTER/doctor/...
ghs-p301-p330-p331 = IF SWALLOWED: Rinse mouth. Do NOT induce vomiting.
  .when = IF SWALLOWED
  .do = Rinse mouth. Do NOT induce vomiting.
ghs-p303-p361-p353 = IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water [or shower].
  .when = IF ON SKIN (or hair)
  .do = Take off immediately all contaminated clothing. Rinse skin with water or shower.
ghs-p310 = Immediately call a POISON CENTER/doctor/...
  .other = Get emergency medical help immediately. (P316)
  .do = Immediately call a POISON CENTER/doctor.
ghs-p313 = Get medical help. (P317)
  .other = Get medical advice/attention.
ghs-p316 = Get emergency medical help immediately.
  .other = Immediately call a POISON CENTER/doctor/... (P310)
ghs-p317 = Get medical help.
  .other = Get medical advice/attention. (P313)
ghs-p333-p313 = If skin irritation or rash occurs: Get medical help. (P333+P317)
  .other = If skin irritation or rash occurs: Get medical advice/attention.
ghs-p333-p317 = If skin irritation or rash occurs: Get medical help.
  .other = If skin irritation or rash occurs: Get medical advice/attention. (P333+P313)
ghs-p342-p311 = If experiencing respiratory symptoms: Call a POISON CENTER/doctor/...
ghs-p362-p364 = Take off contaminated clothing and wash it before reuse.
ghs-p363 = Wash contaminated clothing before reuse.
ghs-p391 = Collect spillage.
ghs-p501 = Dispose of contents/container to ...
# several of them together, as a label has them: P302+P352 with P333+P317, P305+P351+P338 with P317, P304+P340 with P317
ghs-aid-skin = IF ON SKIN: Wash with plenty of water. If skin irritation or rash occurs: Get medical help.
ghs-aid-eyes = IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing. Get medical help.
ghs-aid-inhaled = IF INHALED: Remove person to fresh air and keep comfortable for breathing. Get medical help.
# end of the official texts


## Air and dust

air-place = Where
  .room = A room or shed
  .hull = Inside a hull, tank or locker
air-room-fold = The room and its fan
air-in-it-fold = Solvent and dust in the air
air-room = Room
air-draught = Openings
  .shut = Everything shut
  .one = Open on one side
  .two = Open on two sides
air-fan = Fan
  .off = No fan
  .in = Blows in
  .out = Blows out
air-which-fan = Which fan
air-opening = Opening opposite the fan
  .help = Free area where air comes in or goes out
air-mixing = Mixing factor
  .help = 1: air mixes perfectly. Ordinary rooms: { $least } (our own judgement) to { $most }
air-clear = Share of the air to clear
air-solvent = Solvent wiped
  .none = None
  .other = Another, from its data sheet
air-solvent-mass = Solvent used
air-wiping = Wiping time
air-molar = Molar mass, g/mol
  .missing = Type the molar mass from the data sheet, or choose a listed solvent
air-limit = Limit in air, ppm
  .missing = Type the limit in air from the data sheet, or choose a listed solvent
air-lower = Lower explosive limit
  .missing = Type the lower explosive limit from the data sheet, or choose a listed solvent
air-dust = Dust
  .none = None
air-temperature = Air temperature
air-solvent-asked = Solvent
  .text = Type grams and minutes to see the vapour in this room.
air-average = The room's average
  .text = Near the work, levels are several times higher. Local codes and the product's data sheet decide.
air-hull = Do not go in
  .text = Work inside a hull or tank needs its own plan, tested air and licensed practice. No figures are shown.
air-permit = Before anybody goes in
# $share: percent
air-cleared = Time to clear { $share }%
  .text = { $minutes } min
  .rough = rounded up to the minute, mixing factor { $mixing }, once no more vapour or dust comes in
  .rough-hours = { $hours } h { $minutes } min, rounded up to the minute, mixing factor { $mixing }, once no more vapour or dust comes in
# $mark: where the figure comes from
air-changes = Air changes
  .text = { $changes } an hour
  .fan = from the fan
  .draught = a draught, { $mark }: still air gives less
air-volume = Room
air-make-up = Opening the fan needs
  .text = at least { $area }
  .rough = rounded up, { $pressure } Pa and a plain opening, { $mark }
air-no-make-up = No opening for the fan
  .text = A fan moves almost no air without an opening on the far side. Open { $area } there. The fan is not counted.
air-small-make-up = Opening too small
  .text = The opening lets through about { $passes } of the fan's { $flow }. Open { $area }.
air-needed = Air needed
  .rough = rounded up, mixing factor { $mixing }, { $where }
# where the limit of a solvent comes from
air-lowest-limit = lowest limit, { $where }
air-vapour = Vapour at the end
  .rough = room's average, even evaporation
air-ppm = { $share } ppm
air-percent = { $share }%
air-of-limit = Share of the limit, { $limit }
air-of-lower = Share of the lower explosive limit
  .rough = stay under { $most }%, lowest limit of the sources
# $share: percent
air-explosive = Vapour can catch fire
  .text = Do not do this: it is over { $share ->
      [50] a half
      [25] a quarter
      [20] a fifth
      [10] a tenth
     *[other] { $share }%
    } of the lower explosive limit. Use less, work outdoors, keep sparks away.
air-over-limit = Over the limit
  .text = Too much vapour for this room. Work outdoors, use less, or move more air.
air-fan-spark = Fan's motor
  .text = Vapour must not pass a motor that can spark. Let an ordinary fan blow clean air in instead.
air-handbook = Air needed, another way
  .rough = by the handbook's 403 rule, at { "21 degC" }: for health only, not against fire
air-dust-room = That limit in this room
  .text = { $mass } mg in the air
  .rough = a pinch, rounded down: a warning, not a safe amount
air-dust-mask = Dust
  .text = { $about } Put on a particle mask first. A half mask that fits is rated for { $times } times the limit.
# $fraction: which part of the dust; $region: where it holds; $where: who set it
dust-limit = { $limit } mg/m³
  .rough = lowest limit, { $fraction }, { $region }, { $where }
dust-total = total dust
dust-inhalable = inhalable dust
dust-thoracic = thoracic dust
dust-fine = respirable dust
solvent-molar = molar mass
solvent-density = density
solvent-lower = lower explosive limit
solvent-upper = upper explosive limit
solvent-day = limit for a working day
solvent-short = limit for 15 minutes
# rooms and fans to start from
row-room =
  .shed = Shed, { $length } by { $width } by { $height }
  .garage = Garage, { $length } by { $width } by { $height }
  .tent = Tent over the boat, { $length } by { $width } by { $height }
row-fan =
  .small = Window fan, { $flow }
  .box = Large fan, { $flow }
# the drawing of a room from above
air-drawing = Where the air goes
  .you = you
  .work = work
  .in = in
  .out = out
  .fan = fan
  .told = From above: air comes in at one end, passes you, then the work, and leaves at the far end.
  .told-in = From above: air comes in at one end, passes you, then the work, and leaves at the far end. The fan is where the air comes in.
  .told-out = From above: air comes in at one end, passes you, then the work, and leaves at the far end. The fan is where the air goes out.
powder-wood-flour = Wood flour
  .about = Wood dust can burn in the air. Breathed in, it is treated as a cause of cancer.
powder-silica = Fumed silica
  .about = It stays in the air for long, and dries skin and eyes.
powder-quartz = Quartz or stone flour
  .about = Quartz dust scars the lungs and can cause cancer.
powder-cotton = Cotton fibre
  .about = Its dust tightens the chest, above all from raw fibre.
powder-milled-glass = Milled glass
  .about = Splinters prick skin and eyes. Rinse, do not rub.
powder-glass-spheres = Glass microspheres
  .about = So light that a breath lifts it. Slippery on the floor.
powder-phenolic-balloons = Phenolic microballoons
  .about = So light that a breath lifts it. Organic dust can burn in the air.
powder-talc = Talc
  .about = Use only talc without asbestos. Ask for its data sheet.
powder-other = Another powder
  .about = Read its data sheet first. Every powder has a dust limit.
dust-sanding-epoxy = Sanding cured epoxy
  .about = Epoxy, filler and wood together: the strictest limit counts.
dust-sanding-glass = Sanding cured glass tape
  .about = Glass dust pricks: cover wrists and neck.
dust-sanding-wood = Sanding plywood
  .about = Wood dust can burn, and is treated as a cause of cancer.
dust-sanding-cedar = Sanding western red cedar
  .about = Its dust can cause asthma, and can burn.
mask-half = Half mask or filtering half mask
mask-full = Full face mask, fit-tested
region-germany = Germany
region-eu = EU
region-us = US
solvent-acetone = Acetone
solvent-isopropanol = Isopropyl alcohol
solvent-ethanol = Ethyl alcohol
solvent-butanone = 2-Butanone
air-rule-mixing-lowest = Mixing factor, lowest in an ordinary room
air-rule-mixing-highest = Mixing factor, highest in an ordinary room
air-rule-pressure = Pressure a fan may use at the make-up opening
air-rule-discharge = Discharge coefficient of a plain opening
air-rule-explosive = Highest share of the lower explosive limit
# the tables of these, and what their rows are called
facts-dust-limits = Dust limits
  .wood = Wood
  .red-cedar = Red cedar
  .silica = Silica
  .quartz = Quartz
  .cotton = Cotton
  .talc = Talc
  .glass = Glass
facts-powders = Powders
facts-sanding = Sanding
facts-masks = Mask, assigned protection factor
facts-solvents = Solvents
facts-air-rules = Rules for air


## Catalogue: tables and what their rows are called

# rows of the kit to start from. Their figures are metric
row-system = { $ratio } by volume
row-scale = Scale that shows { $step }
row-pumps = Two equal pumps, { $stroke }
row-cup =
  .small = Small tapered cup, about { $holds }
  .medium = Tapered cup, about { $holds }
  .tin = Straight tin, about { $holds }
  .tub = Wide tub, about { $holds }
row-graduated =
  .medicine = Medicine cup, { $holds } in steps of { $step }
  .mixing = Mixing cup, { $holds } in steps of { $step }
row-syringes =
  .one-each = One of { $first }, one of { $last }
  .two-alike = Two of { $first }
row-roll =
  .tape = Tape, { $width }, { $weight }
  .cloth = Cloth, { $width } wide, { $weight }
  .ply = Peel ply, { $width }
row-filler =
  .wood-flour = Wood flour
  .silica = Fumed silica
  .cotton = Cotton fibre
  .milled-glass = Milled glass
  .glass-spheres = Glass microspheres, hollow
  .phenolic-balloons = Phenolic microballoons
  .talc = Talc
# a table and its rows, as a builder would look them up: "Cup and stick: Cup filled at most, of its height"
facts-ratio-error = Ratio error of the hardener
  .aim = Good up to
  .stop = Too much from
facts-ratio-cost = Loss from a wrong ratio
  .lost-per-percent = Glass temperature lost per percent of hardener error
  .lost-at-most = Glass temperature lost at both error limits, at most
  .told-evenly = Loss shown per percent, up to an error of
facts-odd-label = Label ratio to check again
  .wrong-way = More hardener than resin, from
  .far-off = Difference from the equivalent-weight ratio, from
  .lightest = Density relative to the first part, from two ratios, least
  .heaviest = Density relative to the first part, from two ratios, most
facts-part-density = Typical density of a part
  .resin = Resin
  .hardener = Hardener
  .same-mark = Two fills of one syringe to one mark differ by at most
facts-ratio-doubt = Doubt of a weight ratio from densities alone, k = 2
  .aim = Shown above
  .stop = No scale reading above
facts-stirring = Stirring, how long to mix
  .stir-short = A small batch
  .stir-long = A large batch, or a cold one
  .small = Small batch, up to
  .cold = Cold mix, below
  .densest = Density where unknown, to be safe
facts-stick = Cup and stick
  .mark-error = How far a mark on a stick may be off
  .tallest = Cup too tall to stir in, height to width
  .room = Cup filled at most, of its height
facts-pumps = Pumps and scales
  .furthest = Batch may grow to fit the ratio, at most
  .own-error = Scale's own error, of a step
  .alike = Two scale steps count as equally near within, of a step
  .stroke-deviation = Pump stroke, standard deviation
facts-damp = Damp, dew and blush
  .margin = Margin of a surface above the dew point, at least
  .damp = Air too damp above a relative humidity of
  .sky = Open night sky cools a surface below the air by
  .meter-off = A hygrometer may move the dew point by
facts-angle = Angle of a joint
  .narrowest = Corner too narrow below
  .flattest = Bulkhead too flat on its panel below
  .flat-from = Flat tape alone, no cove, from
facts-cove = Cove in a flat corner
  .width = Width straight across, of the panel's thickness
facts-outer-edge = Outer edge, rounded over
  .thin-cover = Cover too thin below, of the panel
facts-tape-pieces = Tape cut in pieces
  .most-tapes = Most pieces of one layer
facts-hot-pot = Pot that gets hot
  .most-peak = Hottest peak temperature shown
  .hardly-above = No peak shown within, above the air
  .deepest-cup = Cup depth to width, checked above
facts-pot-clock = Clock of a running pot
  .soon = Last minutes from
  .again = Check again when still usable, after
  .on-way = Link from the other phone counts as new for
  .long-ago = Time is up: pot checked after
  .away = Page hidden: clock in doubt after
  .clocks-apart = Two clocks of one phone differ by
facts-timings-apart = Pot life, timings that disagree
  .times-apart = Label times checked when apart by
  .shallower = What a bag bears of a cup that was too stiff to use
  .roughly = A pot may stiffen later than another by
  .own-doubt = Doubt of your own timing
  .label-doubt = Doubt of the label's pot life
  .film-doubt = Doubt of the label's film time
facts-container-size = Container size where not measured
  .small-cup = Cup width, however little is in it
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
  .off-model = One temperature in a cup off by, of the rise
  .off-time = One temperature in a cup off by, of the time
  .off-end = Test cup's time off by, at least
  .stringy = Pulls strings when cured by
  .stringy-spread = Pulls strings, off by
  .loss-spread = Loss of heat off by
  .heat-spread = Heat of the mix off by
  .strange = Test cup reading checked, deviations
  .unsure = Test cup too uncertain to keep
  .not-told = Test cup shows no heat loss from a doubt of
  .swings = Test cup that cooled and warmed again by
  .up-to = High heat loss used up to, of the test cup's mass
  .another = New test cup when the air differs by
  .ninety = Nine times in ten, deviations
facts-plan-most = Plan, its limits
  .most-pieces = Most pieces of a day
  .most-work = Most pieces once the long ones are cut
  .most-parts = Most parts of one piece
  .most-batches = Most batches of a day
  .most-told = Most batches shown step by step
facts-plan-odd = Plan, what is checked
  .long-day = A long day, hours of work
  .points-gap = Hours between two temperatures
  .before = Opened before its start, nothing late yet
facts-plan-help = Plan, what might help
  .cooler = Move to the shade, cooler by
  .earlier = Start earlier by
  .slower = Slower hardener, usable time
facts-run = Run, what is kept spare
  .least-tape = Shortest tape that is begun
  .spare-time = Spare time of a window
  .spare-share = Spare share of the work to come
facts-boat-most = Boat, limits of one list
  .most-cut = Pieces of tape and peel ply
  .most-faces = Faces to work on
  .most-angles = Angles along all seams
  .most-rolls = Rolls of one kind
  .widest-packs = Largest pack to the smallest
  .warmth = Temperature used if none is typed
facts-filler-parts = Filler, how it goes in
  .first-parts = Share stirred in first
facts-start = Starting values of the forms
  .batch = Batch
  .scoop = Level scoop
  .seam = Seam length
  .boat-seam = Seam length in a boat's list
  .glued-length = Length of glue
  .glued-width = Width of glue
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
facts-looks = Share of the sun a surface absorbs, least and most
facts-cover = Cover: sun that passes, heat given off
facts-sun-on-pot = Sun on a pot
  .beam = Sun square to its rays, W/m2
  .upright = Sun on an upright face, to that on the level
  .uneven = Absorbed sun that counts double for a deep pot, own model, W/m2
  .tray-up-to = Absorbed sun above which a tray does not help, W/m2
facts-cure-stops = Where a cure stops
  .fresh = Glass temperature of the fresh mix
  .cured = Glass temperature, fully cured
  .lambda = DiBenedetto's lambda
  .above-cure = Glass temperature above the cure temperature
facts-post-cure = Post-cure and full strength
  .full-from = Full strength is counted from
  .held-at = Post-cure, held at
  .held-for = Post-cure, held for
  .climb = Post-cure, rise per hour
  .within = Warmth counted within
  .long = Warmth counted in full after
facts-hull-colour = Sunlight a hull absorbs
  .white = White
  .mid = A colour, grey or bare wood
  .dark = Dark or black
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
  .air = Air left by stirring
  .packing = Hollow spheres touch at, by volume
  .sphere-packing = Spheres stirred in pack to, by volume
  .sure = Stiffer than needed, to be safe
facts-own-batches = Own batches of putty
  .batch-deviation = Same putty tapped again, standard deviation
  .batch-worth = Batches this judgement is worth
  .stands-out = Batch stands out from, in standard deviations
  .apart = Two batches contradict, one to the other from
  .far = One batch is far from the table, below and above
facts-glass-tape = Glass tape
  .fibre-density = Density of the fibre
facts-hand-laminate = Glass by weight in hand work
  .for-buying = Used for buying
  .skilled = In skilled hands
  .equal-masses = As much resin as glass
facts-weighed = Seams that were weighed
  .resin = Resin in glass and weave, of the glass by weight
facts-strength = Strength of a seam
  .solid = Solid wood bends to
  .ply-pulls = Plywood pulls to, of its strength in bending
  .solid-pulls = Solid wood pulls to, of its strength in bending
  .solid-across = Solid wood across its grain, of that along
  .ply-across = A veneer across its grain, of its stiffness along
  .panel-stiff = Stiffness of the panel
  .veneer = One ply, for a panel whose plies nobody counted
  .rolls = A veneer sheared across its grain, on average
  .rolls-stiff = Its stiffness in shear
  .putty-bends = Putty bends to
  .putty-push = Putty is pressed to
  .putty-stiff = Stiffness of putty
  .knock = Strength that glass and putty keep
  .tapes = Widths of tape that are tried
  .most-layers = Layers on one face, at most


facts-air = Heat given to the air
  .still = Still air
  .moving = A breeze or a fan
facts-pot-cure = How a pot cures
  .uncatalysed = Cure rate without catalyst, to that with
  .too-hot = Too hot to hold from
  .usable-conversion = No longer usable when cured by
facts-hot = A pot that gets this hot
facts-walls = Thermal resistance of a pot's wall
  .cup = Cup, polypropylene
  .bag = Bag, polyethylene
  .tray = Tray, thin polypropylene
facts-matter = What heats and cools a pot
  .heat-per-epoxide = Heat from each epoxide group
  .epoxide-weight = Epoxide equivalent weight, where the label gives none
  .undiluted = Undiluted
  .phr = Hardener to 100 of resin by weight, where the label gives none
  .specific-heat = Specific heat of the liquid mix
  .filler-heat = Specific heat of filler, from glass to wood
  .conductivity = Thermal conductivity of the mix
  .density = Density of the mix, where the label gives none
  .wood = Thermal conductivity of plywood across the plies
  .bench = Thermal resistance of a wooden bench
facts-lowest = Lowest working temperature
  .fast = Fast hardener
  .medium = Medium hardener
  .slow = Slow hardener
facts-windows = How long a mix can be used
  .soft = A cove of putty on wood
  .film = A thin film
  .exponent = Pot life goes with the mass to minus this power
  .doubling = Quicker for each { "10 K" } warmer
  .share = Share of a window that a plan uses
  .film-share = Share used of a film's time to the gel
facts-counted-at = Hours to the next step, counted at
  .opens = A window that opens: the late reading
  .closes = A window that closes: the early reading
facts-day = A day, hours after midnight
  .coldest = Coldest
  .warmest = Warmest
facts-points-gap = Cure, temperatures that are typed
  .points-gap = Gap if two are more hours apart than
facts-cure-energy = How curing follows the temperature
  .energy = Activation energy
# what is done then, and how one sees that the seam is ready for it
facts-stages = Hours to the next step: fast, medium, slow hardener
  .recoat-from = Recoat without sanding, from
  .recoat-from-look = it no longer moves, a glove still sticks
  .recoat-until = Recoat without sanding, until
  .recoat-until-look = while a thumbnail still dents it. Later: wash, sand, coat
  .tack-free = No longer tacky
  .tack-free-look = a glove no longer sticks
  .peel = Peel ply off
  .peel-look = hard enough that the tape stays down. Or leave the ply on until sanding
  .sand = Sand
  .sand-look = only when dust comes off, not gum. Wash the blush off with water first
  .turn = Turn the hull
  .turn-look = the sample beside the seam is hard. Hold the hull at bulkheads, not at a fresh seam
  .light = Light load
  .light-look = the sample beside the seam is hard
  .full = Full strength
  .full-look = 5 to 7 days are usual, the longer counts
facts-learning = Own rates, learned from taps
  .at-once = Two taps closer together were not timed
  .behind = Tape behind the cove, so that nobody waited
  .far = Faster or slower than usual, left out from
  .deviation = Same hands, standard deviation
facts-hands = How fast the hands are
  .practised = Practised
  .novice = New to it
facts-mixing = Time to mix
  .mix-putty = Mixing and bagging putty
  .mix-wet = Mixing wet-out resin
facts-positions = How the seam lies
  .downhand = Level
  .vertical = Upright
  .overhead = Overhead
facts-rates = How fast one person works
  .place = Place putty
  .tool = Tool the cove
  .clean = Clean the edges
  .wet = Wet out on the tray
  .lay = Lay the tape
  .roll = Roll the air out
  .peel = Peel ply
facts-losses = Left behind, taken up, put on top
  .spare = Spare on liquids
  .tooling = Taken off by tooling, of what is placed
  .backing = Backing tape, spare
  .edges = Taken up by an edge
  .cup = Left in cup and on stick
  .bag = Left in the bag
  .tray = Left in the tray, per area wetted out
  .roller = Left in the roller
  .peel-ply = Taken up by peel ply
  .first-coat = First coat on bare plywood
  .weave = To fill the weave
  .flank = Bare panel under the tape each side of the cove
  .least-radius = Smallest radius that glass and tool bend to
  .one-pass = Thickest throat in one pass
  .ply-margin = Peel ply wider than the tape, each side
  .overlap = Overlap where two pieces of tape meet
  .stagger = Ends of one layer away from those of the next
  .putty-density = Putty for a cove, air in it
  .resin-density = Resin and hardener, mixed
  .reach = Longest piece of tape one person lays
  .abrasive = Tape sanded with one abrasive sheet
  .tie-spacing = Spacing of the ties
facts-draughts = Draughts
facts-surfaces = Faces, cloth, glue and fairing
  .later-coat = A later coat
  .brush = Left in the brush
  .tray-area = Wetted area of a roller tray
  .coat-pace = Time to coat a square metre
  .wet-pace = Time to wet out and squeegee a square metre of cloth
  .wood-drinks = Resin into bare wood under cloth
  .weave-share = Depth of a weave, of a layer's thickness
  .weave-empty = Depth of a weave without glass
  .sanded-off = Left above glass to sand
  .cloth-lap = Lap of two strips of cloth
  .cloth-spare = Cloth over each edge
  .glue-prime = Neat resin on a face to glue
  .end-prime = End grain primed, times a face
  .bond-line = Thickness of a glue line
  .squeezed = Glue squeezed out
  .soak = Wait after priming
  .pressure = Pressure on a glue line
  .clamp = One clamp presses with
  .apart = Clamps apart, at the most
  .fair-depth = Mean depth to fair
  .fair-sanded = Fairing compound sanded off
  .face-pull = Stress that pulls a face veneer off
facts-bonds = Bonds and passes
  .plywood = Plywood in bending
  .butt-reaches = Butted ends reach, of the wood
  .scarf-wood = Scarf of solid wood, ratio
  .scarf-least = Scarf of solid wood, least ratio
  .scarf-ply = Scarf of plywood, ratio
  .gap-glue = Gap too wide for glue, above
  .bend-cold = Cold bend of dry wood, radius to thickness
  .bare-fillet = Fillet without tape, radius to thickness
  .pass-flat = Fairing, one pass on the level
  .pass-upright = Fairing, one pass on a side
  .lean = A side that leans, from level
  .sheet-length = Length of a sheet of plywood
  .sheet-width = Width of a sheet of plywood

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
  .help = Type a word or two: hardener density
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
  .text = Try one word, or show all.


## Pages: what templates say
page-about = Mixing maths for epoxy seams and the work around them, without signal.
page-skip = Skip to the answer
page-old-browser = This browser is too old for Covemix. Update it, or open this page in another one.
page-safety = Safety
page-caution = Caution
page-screens = Screens
page-work-it-out = Work it out
boat-page =
  .print = Print this list
  .use-rolls = Cut from the kit's rolls
  .cut-rolls = All is cut: shorten the kit's rolls
  .demo = Try the demo boat
  .empty = Empty the boat
clock-page =
  .pots = Running pots
  .try-alarm = Try the alarm
  .aloud = Read aloud
  .awake = Keep the screen on
unheard-notify = Notify me when a pot ends
unheard-sound = Sound is off until you tap this page.
unheard-denied = This browser blocks notifications. Keep Covemix in sight.
unheard-granted = A notification comes if Covemix is out of sight. A phone may delay it: come back in time.
welcome-mix = Measure a mix
welcome-seam = Do a seam
welcome-boat = Plan a boat
amount-of-what = of what
pick-yours = Your own
pick-as-typed = Figures typed below
pick-built-in = Built in, typical figures
pick-keep = Save in the kit
select-unsaid = not set
editor-leave = Cancel
editor-keep = Save
row-up = Up
row-down = Down
row-remove = Remove
row-copy = Copy to the other side
# words for the two sides of a boat, in pairs: each stands for the one beside it where a joint is copied to the other side
row-sides = port starboard left right
# reference: a link to a page for people who write programs
kit-page =
  .none = Where nothing of your own stands here, every screen uses typical values, some not verified.
  .add = Add
  .unread = Saved, but cannot be read here
  .log = Poured batches: the log
  .reference = Use from a program
  .phone = This phone
  .no-scripts = Switch scripts on to keep your own things on this phone. You can try one here.
setting-hand = Hand for the keys
setting-hand-right = Right hand
setting-hand-left = Left hand
setting-light = Light
setting-light-as-phone = As the phone
setting-light-sun = Bright sun
setting-light-dark = Dark shed
setting-voice = Read steps aloud
  .none = No English voice on this phone: steps with beeps, not read aloud.
setting-voice-asked = When asked
setting-voice-each = Each step
setting-units = Units
  .help = For every screen. Typed values keep their unit. For another unit or a fraction, tap the unit beside a field: that opens the full keyboard.
backup-copy = A copy of everything
backup-save = Save kit and log to a file
backup-bring-back = Bring back from a file
backup-leave = Leave as it is
backup-add = Add to mine
backup-replace = Replace all
backup-brought = Brought back from files, newest first. Later changes stay.
backup-undo = Undo the newest
page-correct = Fix the marked fields to see results.
page-list = { $one }, { $more }
  .apart = { $one }; { $more }
page-fill-in = Fill in what is missing for results.
log-page =
  .search = Search the log
  .add = Add a batch
  .none = No batches yet. Batches that you log on Pour appear here.
  .not-found = No batch has all of these words.
  .more = Show more
  .table = Save as a table (CSV)
  .everything = Save everything: in Kit
  .no-scripts = Switch scripts on to keep the log on this phone.
  .when = When
plan-page =
  .take-boat = Use the boat’s seams
  .own-rates = Use my rates from the log
  .print = Print the plan and a card for each batch
pour-page =
  .along = Pour step by step
  .keep = Log this batch
  .cup = The cup, to scale
  .parts = All parts, and more figures
safety-page =
  .first-aid = First aid
  .ways = What happened?
  .hot = Hot pot
  .eyes = Eyes
  .skin = Skin
  .swallowed = Swallowed
  .fire = Fire
  .spill = Spill
  .sources = Sources of all figures
share-share = Share
page-old = Old results: calculating
share-hand-over = Hand over
share-carries = The QR code holds
share-carries-link = The link
share-carries-words = Plain words
share-carries-help = Plain words are for a phone that has no signal and no Covemix.
share-link = Link
share-send = Send
share-copy-link = Copy link
share-copy-words = Copy as words
share-print = Print a card
share-paste = Paste a link
share-scan-elsewhere = This browser cannot scan: use the phone's camera, then paste the link.
share-look = Check the link
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
card-class = Cards for a class, up to { $most }
  .number = { $number } of { $all }: { $title }
  .name = Name
  .empty = Empty cup weighs
  .full = Cup and mix weigh
  .met = Hardener went in at
  .stiff = It stiffened at
spreader-page =
  .print = Print at 100%
files-page =
  .name = Files
  .shopping = Shopping list (CSV)
  .cuts = Cut list (CSV)
  .cuts-drawn = Cut list, drawn (SVG)
  .save = Save the boat as a file
  .open = Open a boat's file
  .opened = The boat of the file is filled in.
  .no-boat = No boat is in this file.
  .batches = Batches (CSV)
  .day = Day
  .calendar = Into a calendar (iCal)
  .section = Drawing at true size (SVG)
  .template = Template (SVG)
  .cutter = For a cutter (DXF)
# a column of a table and its unit
file-head = { $name } [{ $unit }]
file-item = Item
file-mass = Mass
file-piece = Piece
file-stock = Cut from
  .roll = roll
file-face = Face
file-batch = Batch
file-start = Start
file-end = End
file-done = Done
file-day = Day
file-coat = Coat
file-mixed-at = First type when it was mixed.
file-no-day = Choose a day.
pour-along-on = Go on at step { $step } of { $all }
steps-name = Step by step
steps-tub-before = Filler tub before
steps-tub-after = Filler tub after
steps-came-out = How stiff it came out
steps-keep-batch = Save this batch
steps-rescue = Rescue this batch
steps-undo = Undo
steps-say = Read aloud
steps-leave = Leave
trial-page =
  .more = Test cup: more figures
surface-page =
  .way = Faces: coats, cloth, glue
joint-page =
  .more = Joint: more figures
field-understood = understood as { $read }
pick-own = { $name } ({ $whence })
record-figures = { $label }: figures
record-mark = These figures are { $mark }. Type your own over them.
row-add = { $each }: one more
row-name = { $each } { $count }
fold-more = { $label }: more figures
backup-would = { $button } would change:
steps-otherwise = { "" }, if different
page-pour = Pour
page-joint = Joint
page-surface = Faces
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


## Scripts: notices, buttons and what the page says of itself

page-stale = These results are old. New ones are being calculated.
engine-fault =
  .unstarted = the calculator did not start
  .fell = the calculator crashed
  .hung = the calculator took too long
  .unreadable = the calculator's answer could not be read
  .late = the calculator is still loading
  .unreached = no connection
  .lacks = the browser lacks a needed part
  .damaged = { $file } is damaged
page-undo = Undo
backup-wrong = This file could not be read. Nothing was changed.
  .not-ours = This file is not from Covemix. Nothing was changed.
  .too-large = This file is too large for a Covemix file. Nothing was changed.
  .newer = This file is from a newer Covemix. Nothing was changed. Update first.
  .unread = The data on this phone could not be read. Nothing was saved or changed.
entry-no-figures = Its results could not be calculated.
entry-unread = Unreadable entry
  .why = It stays as it is, also in the file that Kit saves. No result uses it.
  .removed = The unreadable entry is removed.
entry-remove = Remove
kit-added = { $name } is in the kit.
kit-nameless = Number { $id }
page-not-whole = Covemix did not load fully. Open it again with a good connection.
  .of = Covemix did not load fully ({ $names }). Open it again with a good connection.
engine-started-anew = The calculator stopped and was restarted. Your entries are safe.
lead-here = { $label }: values filled in.
offline-plain = This is an http address: Covemix works only while you are connected. To use it without signal, open it from an https address (the command covemix export makes the files).
offline-half = Covemix did not load fully: the signal dropped, this network has a sign-in page, or the phone is full. It does not work without signal yet. Open it again with a good connection.
offline-half-update = The update did not load fully: the signal dropped, this network has a sign-in page, or the phone is full. The version on this phone still works. The update is tried again later.
update-whole = An update is ready. It waits because a pot is running. The pot's clock goes on after it.
update-ready = An update is ready. Results stay the same until you take it.
update-now = Update now
update-unfetched = The update could not be loaded. Try again with a connection.
update-none = There is no update yet.
offline-ready = Covemix is saved on this phone and works without signal.
offline-icon = iPhone: in Safari, a week without a visit deletes kit and log. Tap Share, then Add to Home Screen.
  .across = The icon starts empty: open it once with signal, save a file here, and bring it back there.
offline-unkept = This browser cannot save Covemix for use without signal.
part-unfetched = This part of Covemix could not be loaded. Try again with a connection.
recalled-this = This version of Covemix is recalled.
page-close = Close
page-unanswered = No answer. Your input is fine. Tap again.
pot-empty = Empty
pot-still-good = Still usable
pot-stiffening = Stiffening
pot-gone = Too stiff
pot-end = End this pot
pot-air = The air has changed
  .label = Air temperature now (colder air gives a pot no more time)
  .act = Use this
pot-left = Set what is left
  .label = Time left, by the other phone or your watch
  .act = Use this
pot-nameless = Pot
pot-done = Done: { $step }
pot-doubt =
  .unshown = This pot's clock cannot be shown. Watch the pot itself.
  .working = Working out this pot's clock. Watch the pot itself.
  .behind = These minutes are old: the calculator does not answer. Watch the pot itself.
  .not-started = No clock was started: this phone cannot save. Set the phone's own alarm.
  .no-start = No clock was started: the time of mixing is not known.
  .strange = The clock of a saved pot cannot be read. Watch the pot itself. You can end it on Clock.
card-code = QR code of the link: { $told }
card-opens = Scan to open
link-not-looked-at = The link could not be checked: the calculator did not load, and there is no server connection. Your values are unchanged.
link-used = The link's values are filled in.
link-use = Use these
link-keep-mine = Keep mine
link-try-again = Try again
link-shows = The link holds: { $words }. Your values are unchanged.
  .this = This is from a link. Your values are unchanged.
paste-strange = This is not a Covemix link. Nothing was changed.
paste-no-camera = The camera cannot be used. Paste the link instead.
paste-unread = The link could not be checked. Try again.
share-copied = Link copied.
  .link = Link copied. It holds the values and opens without signal.
  .words = Text copied.
share-copy-the-link = Copy link
share-pot = Scan this or open the link on another phone to show the same clock.
share-code = QR code of the link { $link }
share-too-much = Too much for a QR code. Send the link instead.
share-unmade = The link could not be made. Close this and try again.
share-copy-marked = Copy the marked text above.
store-blocked = An older tab blocks kit and log. Close that tab to get them back.
store-failed = This browser cannot save (private mode, or the phone is full). Your entries are still here.
store-newer = A newer Covemix saved kit, log and running pots here. Open this page again with a connection to get them back.
store-may-clear = The browser may delete this phone's kit and log when space is short. Save them to a file now and then.
backup-nothing = Nothing: all of it is here already.
backup-nameless = unnamed
backup-replaced = The file has replaced your data.
backup-added = The file is added to your data.
boat-demo = An example dinghy is filled in.
boat-emptied = The boat is empty.
boat-full = The list is full. Remove a remnant first.
boat-no-roll = This list needs no roll from the kit.
boat-rolls = { $count ->
    [one] The cut list now uses { $count } roll from the kit.
   *[other] The cut list now uses { $count } rolls from the kit.
  }
boat-left = The kit now has what is left: { $left }.
clock-mixed = Mixed now. The clock uses the air temperature on this screen. Correct it if it has changed.
pot-link = The link holds a running pot. { $words }
  .unread = The link holds a running pot that could not be checked.
  .again = Try again
  .add = Add this pot
pot-logged = The pot is in the log.
pot-ended = The pot is ended.
kit-copy = { $name }, copy
kit-copied = { $name } is copied.
kit-removed = { $name } is removed.
kit-taught = { $name } now has its own rates.
kit-use-rates = Use my rates
entry-change = Change
entry-copy = Copy
setting-unkept = This browser cannot save. The setting lasts until you close the page.
log-removed = The batch is removed.
log-again = Pour again
  .done = The batch is on Pour again.
plan-no-seams = The boat has no seams to lay yet.
pour-unkept = Not saved: this browser cannot save.
pour-batch-logged = The batch is in the log and counts from now on.
pour-anew = Next batch: the last readings are cleared.
pour-logged = The batch is in the log.
  .more = Add seam, lot, outcome
engine-missing = The calculator did not load. Open this page again with a connection. If that does not help, this browser is too old.
  .server = The calculator did not load. With a connection, “Work it out” asks the server instead.
pick-put-away = New choice: the values typed for the one before are set aside.
page-not-old = These results are old. Wait for the new ones.
store-unkept = This browser cannot save. Your entries last until you close the page.
page-our-fault = Calculation failed. Your input is fine. Change any field to try again.
  .why = Calculation failed ({ $why }). Your input is fine. Change any field to try again.
row-removed = { $called } is removed.
steps-working = Calculating. Below is the step before your tap.
steps-step = Step { $step } of { $all }: tap when done
steps-then = Then: { $label } { $figure }
backup-begun = started { $when }
backup-names = { $names } and { $count } more
backup-changes = { $way ->
    [comes] Added
   *[goes] Removed
  }: { $store ->
    [kit] { $count ->
      [one] { $count } kit item
     *[other] { $count } kit items
    }
    [log] { $count ->
      [one] { $count } log entry
     *[other] { $count } log entries
    }
   *[pots] { $count ->
      [one] { $count } running pot
     *[other] { $count } running pots
    }
  } ({ $names })
backup-holds = File: { $file }. This phone: { $phone }.
backup-over = { $count ->
    [one] No clock is started: { $count } pot ended long ago ({ $names })
   *[other] No clock is started: { $count } pots ended long ago ({ $names })
  }
backup-runs-on = Pots running here keep running: { $pots }.
backup-count = { $count ->
    [one] { $things } in the kit, { $count } batch
   *[other] { $things } in the kit, { $count } batches
  }
  .others = { $count ->
    [one] { $count } other log entry
   *[other] { $count } other log entries
  }
  .pots = { $count ->
    [one] { $count } running pot
   *[other] { $count } running pots
  }
lost-newer = An update is on this phone. It waits because a pot may be running. The pot's clock goes on after the update.
lost-back = Open Covemix once with a connection to get it back. Your kit and log are stored separately.
lost-pots = { $count ->
    [one] A pot is running and no alarm rings here. Set another alarm and watch the pot itself.
   *[other] { $count } pots are running and no alarm rings here. Set another alarm and watch each pot itself.
  }
lost-pot = A pot
  .unread = { $called }: its clock cannot be read.
  .mixed = { $called }: mixed at { $mixed }.
  .lasts = { $called }: mixed at { $mixed }, usable for { $lasts } from then.
lost-gone = This phone has deleted its copy of Covemix, and there is no signal.
lost-damaged = This phone's copy of Covemix is damaged, and the missing part could not be loaded.
offline-damaged = Part of this phone's copy of Covemix is damaged and could not be loaded again ({ $part }).
  .mend = Open Covemix again with a good connection. Your kit and log are stored separately.

## Language: how another one is taken up

# said in the language itself, while the page is in another
language-offer = Covemix speaks English too.
language-stay = Not now
language-unfetched = The other language could not be loaded. Try again with a connection.
language-unkept = This browser cannot save the app, and this server sends one language only.
setting-language = Language
  .help = For every screen, once this phone has loaded the language. What you typed stays as typed.

## Data: what was kept as words before

log-volume = Mixed volume
# one word each, as a form shows what is kept: "stiff 31 min 240 g cup", "roll 0.5, 0.41 to 0.6, from 3", "each : out".
# Write each in small letters into SPELT of things/kept_words.py too, or what is shown cannot be read
kept-word =
  .stiffening = stiffening
  .good = usable
  .gone = stiff
  .cup = cup
  .bag = bag
  .tray = tray
  .bead = bead
  .roll = roll
  .film = film
  .filler = filler
  .resin = resin
  .sun = sun
  .some = some
  .full = full
  .white = white
  .bare = bare
  .wet = wet
  .putty = putty
  .dark = dark
  .black = black
  .glass = glass
  .thick = thick
  .doubt = doubt
  .mass = mass
  .air = air
  .loss = loss
  .heat = heat
  .width = width
  .mix = mix
  .place = place
  .tool = tool
  .clean = clean
  .soak = wet
  .lay = lay
  .press = roll
  .peel = peel
  .to = to
  .from = from
  .each = each
  .in = in
  .out = out
# behind a tap on what leads on: "Cove tooled: done."
lead-done = { $label }: done.

## From a laptop to a phone: the page of `covemix serve --lan`, in plain http

bring-title = Covemix for this phone
  .why = { $name } gives Covemix to the phones in its network. A phone that trusts its certificate keeps the app and needs no signal from then on.
  .covers = The certificate is good for { $covered } only. It cannot vouch for any other site.
  .remove = Remove it from a phone
bring-compare = Compare the fingerprint
  .why = Somebody in this network could change this page. Compare what the phone shows of the certificate with the screen of the laptop. If one letter differs, do not trust it: remove it.
  .sum = SHA-256 fingerprint of the certificate
bring-iphone = iPhone or iPad
  .get = Open this page in Safari. Download the profile and tap Allow.
  .file = Download the profile
  .install = Open Settings, tap Profile Downloaded. Tap More Details, then the certificate, and compare its SHA-256.
  .agree = If it is the same, go back and tap Install.
  .trust = Open Settings, General, About, Certificate Trust Settings. Turn on the one named Covemix.
bring-android = Android
  .get = Open this page in Chrome. Download the certificate. If Chrome warns that the file came without protection, keep it.
  .file = Download the certificate
  .install = Search the Settings for "CA certificate". Choose Install anyway, then the file.
  .compare = Search the Settings for "trusted credentials". Open User, tap the certificate and compare its SHA-256.
  .notice = Android says from then on that the network may be monitored. It says so of each certificate that somebody installs.
bring-computer = Another computer
  .get = Download the certificate. Add it to the authorities that the browser or the system trusts for websites, and compare its SHA-256 first.
bring-open = Open Covemix
  .stays = Open it by this name. It stays, whatever address the router gives the laptop.
  .missing = This phone does not find { $name }. Use the address below.
  .by-address = By address, if the phone does not find the name:
bring-moves = If the address changes
  .why = The phone keeps kit and log under the address that you open. Under another address Covemix starts empty. What was kept under the old one waits there.
  .router = Do you open it as { $address }? Tell the router to always give the laptop this address. Most routers call that a reserved address.
  .save = Save a copy to a file, so that nothing is lost:
  .back = Under the new address, open Kit and tap "{ $button }".
bring-remove = Remove the certificate
  .iphone = iPhone or iPad: Settings, General, VPN & Device Management, the one named Covemix, Remove Profile.
  .android = Android: search the Settings for "trusted credentials", open User, tap the one named Covemix, Remove.
  .computer = Another computer: delete it where you added it.
  .stays = The app on the phone still opens then, with kit and log. It gets no updates from this laptop any more.
bring-not-here = There is nothing at this address.
  .back = Back to the certificate
missing-page = There is no page of Covemix at this address.
  .back = Open Covemix
backup-address = This phone keeps kit and log under the address { $address }. If the router gives the laptop another address, Covemix starts empty there. Save a copy first.


## Run: a batch of a plan from the wood to the peel ply, a step at a time

run-go = Next batch, step by step
knock-off = Double knock: off
knock-on = Double knock: on
knock-try = Lay the phone on the bench. Knock twice beside it to try.
knock-felt = Felt. Knock twice for the next step; tap where you measure or a clock starts. Two hammer blows may count too: Undo.
knock-none = No motion sensor here. Tap instead.
knock-refused = This phone refuses its motion sensor. Tap instead.
run-calendar = Dates for the calendar
run-refused = No batch is left that can be laid. See Plan.
run-part = Piece of a helper
  .none = This piece is not in the batch now. Ask whoever sent it.
  .what = Helper: { $piece }
run-hand = Give a piece to a helper
  .piece = { $piece }: scan this for the same minutes. When they call it done, tap its steps here.
run-tape = Too little time for the tape
  .fits = Lay what there is time for
  .all = Lay all of it
run-air = Air typed, how long ago
  .plan = Look at the thermometer now.
  .age = Typed { $span } ago. Look again.
run-ready = All within reach
  .under = Bag, spreader, scraper, rags, two pairs of gloves.
  .tape = Tape and peel ply cut: { $lengths }. Bag, tray, roller, scraper, rags, two pairs of gloves.
run-prepare = Prepare the wood
  .under = Dry, sanded, dust off. Mask what must stay clean.
run-protect = Gloves and goggles on
  .under = Read the safety data sheet. Let fresh air in.
run-keep = Onto the tray, first
run-filler = Filler, until it stands, about
  .under = Put the mask on before you open the tub.
run-bag = Scrape the putty into the bag, at once
  .under = A full cup heats up. Bag, spreader and scraper ready.
run-place = If the bag gets hot, stop. Take it outdoors.
run-clean = Never clean skin with solvent.
run-gate = No time for all tape. Now only
  .all = Two of us: lay all
run-tray = Pour it all onto the tray
  .under = Fresh gloves. Leave none in the cup: it heats up there.
run-lay = Its middle on the corner. Overlap the ends.
run-roll = White spots: dab on resin, roll again.
run-peel = Press it down without folds.
run-cleanup = Clean up
  .under = Spread leftovers thin, outdoors, without a lid. Gloves off, wash with soap and water.
run-date = Peel ply off from
  .bare = Done
  .unknown = The label says when the next step may follow.
  .under = Feel first: it must not be tacky.
  .coat = Second coat from { $opens } until { $closes }. Feel first: tacky, but no longer wet.
  .shut = Sand before the second coat: the time to recoat ends before the peel ply may come off.
  .off = Peel ply off
  .coats = Second coat
run-kept = It is in the log and in Plan.
run-window =
  .bag = Bag
  .cup = Cup
  .cove = Soft cove
  .film = Wet film
  .hurry = hurry
  .late = too short
  .over = over
run-saved = Still to save
  .bag = The bag will not last. Place what still flows, then stop. Cut the bead square.
  .bag-over = The bag's time is over. Stop when it pulls strings or gets hot. Never thin it.
  .cove = The cove will not stay soft. Finish what is soft. Sand the rest after the cure, add a second pass.
  .cove-over = The cove's time is over. Stop when the tool tears it. Sand after the cure, add a second pass.
  .cup = Pour the cup onto the tray now.
  .film = The wet film will not last. Roll the tape that lies. Put peel ply on it. Sand the rest after the cure.
  .cut = There is time for only { $length } of tape. Cut the piece there. The rest goes on after the cure.
  .cut-done = Cut the tape there. The rest goes on after the cure.
  .leave = Mix no resin now. Lay the tape after the cure.
  .two = Two people can lay all of it: one wets out, one lays.
  .roll = Lay at most { $length } more. Cut it square. Roll what lies.
  .roll-over = Lay no more. Roll what lies, cut it square. The rest goes on after the cure.
