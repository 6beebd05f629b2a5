"""What answers tell hands to do and to leave where it can hurt, outside the catalogue: typed a second time, by its key.

Whoever changes such a sentence changes it here as well, and has thought of the person who follows it. All of it is
common practice, but for what the sentence itself calls from memory or own judgement; the data sheet overrides it.
"""

TOLD = {
    # a run, step by step
    "run-ready.under": "Bag, spreader, scraper, rags, two pairs of gloves.",
    "run-ready.tape": "Tape and peel ply cut: {lengths}. Bag, tray, roller, scraper, rags, two pairs of gloves.",
    "run-prepare.under": "Dry, sanded, dust off. Mask what must stay clean.",
    "run-protect": "Gloves and goggles on",
    "run-protect.under": "Read the safety data sheet. Let fresh air in.",
    "run-filler.under": "Put the mask on before you open the tub.",
    "run-bag.under": "A full cup heats up. Bag, spreader and scraper ready.",
    "run-place": "If the bag gets hot, stop. Take it outdoors.",
    "run-clean": "Never clean skin with solvent.",
    "run-tray.under": "Fresh gloves. Leave none in the cup: it heats up there.",
    "run-cleanup.under": "Spread leftovers thin, outdoors, without a lid. Gloves off, wash with soap and water.",
    "run-saved.bag": "The bag will not last. Place what still flows, then stop. Cut the bead square.",
    "run-saved.bag-over": "The bag's time is over. Stop when it pulls strings or gets hot. Never thin it.",
    "run-saved.cove": "The cove will not stay soft. Finish what is soft. Sand the rest after the cure, add a second "
                      "pass.",
    "run-saved.cove-over": "The cove's time is over. Stop when the tool tears it. Sand after the cure, add a second "
                           "pass.",
    "run-saved.film": "The wet film will not last. Roll the tape that lies. Put peel ply on it. Sand the rest after "
                      "the cure.",
    "run-saved.leave": "Mix no resin now. Lay the tape after the cure.",
    "run-saved.roll-over": "Lay no more. Roll what lies, cut it square. The rest goes on after the cure.",
    "run-date.under": "Feel first: it must not be tacky.",
    "run-date.unknown": "The label says when the next step may follow.",
    "run-date.shut": "Sand before the second coat: the time to recoat ends before the peel ply may come off.",
    # a plan
    "plan-limit-bag.late": "Empty the bag now: spread the rest thin outdoors. Mix less next time.",
    "plan-limit-cup.late": "Pour the resin onto the tray now, or outdoors. Mix less next time.",
    "plan-limit-cove.late": "Do not push tape into stiffening putty. Let it harden, wash and sand it, then tape.",
    "plan-do-not-start": "Do not start",
    # a seam, its strength
    "joint-strength.estimate": "An estimate, not an approval: plans and class rules come first.",
    "joint-strength.peels": "the face veneer peels first. Tape is not counted.",
    "joint-strength-model.text": "Panel of {strength} along its face grain. Glass by ISO 12215-5 as recalled, from "
                                 "memory. Wood under the tape and putty: our own judgement.",
    "joint-passes.rough": "putty deeper than {throat} heats and sags. Let the first pass stiffen (our own "
                          "judgement).",
    # coats, cloth, fairing, glue
    "surface-pots.caution": "Pour each pot out at once. Left in cup or tray, it heats up and can smoke.",
    "fairing-dust.text": "Wear a particle mask and goggles, and draw the dust off. Sand only what has cured hard.",
    "fairing-pots.caution": "Spread each batch at once. Light compound keeps its heat in.",
    "fairing-never": "Never under tape",
    "coats-cold.text": "Warm the wood first: below {lowest} this hardener may never cure.",
    "gluing-neat.rough": "end grain gets more. Brush again where it turns dull, but never wait until it skins.",
    "gluing-two-pots.big": "{mass} or more in one cup can smoke. Mix the neat resin first, the glue after the wait, in "
                           "several cups.",
    "boat-cartridges.rough": "one for each person. Vapour and dust need different filters: see Safety.",
    "thicken-fairing-only.text": "{fillers}: for fairing only, never for load in a seam. Use wood flour, cotton "
                                 "fibre or silica.",
    # a pour
    "pouring-done.under": "A full cup heats itself: spread or lay it now.",
    "pouring-done.in-sun": "A full cup heats itself: lay it now, or spread it in the shade.",
    "pouring-done.said": "Done. A full cup heats itself: use it up.",
    "pouring-done-within.said": "Done. A full cup heats itself: use it up within {time} of first contact.",
    "scale-reading.not-again": "do not zero again: this is the total in the cup",
    "rescue-filler.rough": "Filler never counts in the ratio. Stir the liquids in well before the filler.",
    # a pot, the sun, a test cup
    "sun-shade-first.tray": "Do not use a tray in this sun: the mix lasts {tray} there. In the shade this pot lasts "
                            "{shade}. A tray helps only in the shade.",
    "trial-place.text": "Set the cup outdoors on bare ground, shaded, out of the wind. Keep anything that burns away.",
    "trial-thermometer.text": "Never use the thermometer for food again. Hold its tip in the middle with a stick. Wipe "
                              "it before the mix sets.",
    "trial-hot.text": "From {hot} the mix can smoke, burn skin and catch fire: leave the cup where it stands. Nobody "
                      "leans over it. Never hold it. Wear gloves and goggles. Keep upwind. The product's data sheet "
                      "comes first.",
    # a cure
    "cure-handle.look": "move the part, do not load it",
    "cure-cold.do": "Warm the seam, not only the air. Use a tent and a gentle electric heater outside the vapours, "
                    "never an open flame. Or wait for warmer days before mixing.",
    "cure-post.how": "Raise the heat at most {climb} an hour. Support the hull in its shape: the seam softens on the "
                     "way. The data sheet overrides this.",
    "cure-sun.shade": "Shade it, support its shape, and do not load it while hot.",
    "cure-sun.shade-paint": "Shade it, support its shape, and do not load it while hot. Or paint it white.",
    "cure-sun.shade-post": "Shade it, support its shape, and do not load it while hot. Or post-cure it first.",
    "cure-sun.shade-paint-post": "Shade it, support its shape, and do not load it while hot. Or paint it white. Or "
                                 "post-cure it first.",
    "dew-damp.text": "Do not coat or tape now. Warm the surface to {wanted} above the dew point, or wait. A burning "
                     "gas heater makes it worse: it gives off water.",
    "dew-blush-wash.text": "Pull the peel ply off, then wash with clean water and a pad. No solvent: it smears the "
                           "blush.",
    "dew-blush-sand.text": "Put mask and gloves on. Sand only now, and only what is hard. Sanding first rubs the blush "
                           "in.",
    # cautions of the moment, safety
    "caution-hot-pot.text": "{amount} left in one pot can smoke and burn. Use it up, or spread it in a tray at once.",
    "caution-hot-pot.short": "{amount} left in one pot can smoke and burn.",
    "caution-hot-pot.left": "{amount} left together can smoke and burn.",
    "caution-hot-pot.in-sun": "{amount} left in one pot can smoke and burn. Use it up, or spread it in the shade.",
    "caution-big-pot.in-sun": "{amount} in one cup can smoke. Split it, or spread it in the shade.",
    "caution-thick.text": "Putty {depth} deep heats itself on the boat too. Apply it in two passes.",
    "caution-corrosive": "{signal}, goggles on: {code}",
    "aid-sheet": "Follow your safety data sheet first",
    "aid-sheet.text": "These steps are for products that burn skin and eyes, as hardener can.",
    "air-dust-mask.text": "{about} Put on a particle mask first. A half mask that fits is rated for {times} times the "
                          "limit.",
    "air-hull": "Do not go in",
    "air-average.text": "Near the work, levels are several times higher. Local codes and the product's data sheet "
                        "decide.",
    "bring-compare.why": "Somebody in this network could change this page. Compare what the phone shows of the "
                         "certificate with the screen of the laptop. If one letter differs, do not trust it: remove "
                         "it.",
    # what is followed with a coat, a cloth, glue or a can in the hand, though no danger is named in it
    "coats-sand.text": "The time without sanding ends before you are back. Wash with water, let dry, sand dull, "
                       "then coat.",
    "coats-start.text": "from {earliest} until {latest}",
    "coats-start.sand": "from {earliest}, washed and sanded first",
    "coats-start.rough": "Press a gloved thumb on it: it must hold the next coat and still dent. The label comes "
                         "first.",
    "plan-layer-next": "Next coat from {opens}, laid by {closes}, else wash and sand from {sands}",
    "plan-layer-next.late": "Wash and sand from {sands}, then the next coat",
    "plan-layer-next.open": "Next coat from {opens}",
    "coats-rising.text": "Bare wood that warms up blows bubbles. Begin in the shade, late in the day.",
    "coats-three.text": "Roll three on bare wood that will be wet: pinholes of one coat are closed by the next "
                        "(common practice).",
    "sheathing-dry.text": "Cloth laid dry on bare upright wood starves. Coat first, lay the cloth into it while it "
                          "is tacky.",
    "gluing-steep.text": "Cut it at least {wanted} to 1.",
    "gluing-wide.text": "Above {gap} use putty that stands, and back the gap (our own judgement).",
    "gluing-tight.text": "The bend is less than {times} times one layer's thickness (our own judgement). Use "
                         "thinner layers, or try one dry.",
    "gluing-lightly.text": "Press until a bead shows all along. Hard clamping starves an epoxy joint (common "
                           "practice).",
    "gluing-two-pots.text": "Priming, waiting and spreading take {needed}, the cup lasts {lasts}. Mix the glue "
                            "after the wait.",
    "gluing-one-pot.text": "prime from it, thicken the rest: {needed} of {lasts}",
    "gluing-former.rough": "counts the least springback: equal layers, stiff glue. Soft or warm glue springs back "
                           "more: try one.",
    "gluing-plans.text": "Glue one test piece and break it. Epoxy joints lose strength in heat and wet.",
    "fairing-dark.text": "Phenolic balloons soften in full sun (common practice). Paint white or light.",
    "shelf-last": "Use it by {day}.",
    "shelf-last.soon": "Ends on {day}. Use it first.",
    "shelf-last.past": "Ended on {day}. Test it first.",
    "shelf-crystals.text": "loosen the lid and warm it in a water bath of {warm} until clear: up to {hours} if not "
                           "stirred. Stir. Let it cool before you mix, or it stiffens much sooner (common "
                           "practice).",
    # a run, a plan, a pour, a cure, the air: when to stop, and what a figure is not
    "run-saved.cut": "There is time for only {length} of tape. Cut the piece there. The rest goes on after the cure.",
    "run-saved.cut-done": "Cut the tape there. The rest goes on after the cure.",
    "run-saved.roll": "Lay at most {length} more. Cut it square. Roll what lies.",
    "run-saved.two": "Two people can lay all of it: one wets out, one lays.",
    "run-air.age": "Typed {span} ago. Look again.",
    "plan-limit-film.late": "Lay peel ply only where the tape is still wet. Elsewhere let it cure, wash and sand it.",
    "plan-limit-cove.late-bare": "Leave the stiff cove. Let it harden, sand it, fill what is missing.",
    "pouring-rest.under": "Stop when the stiffness is right: {dose}. Scrape bottom, corners and stick.",
    "pouring-rest.said": "The rest little by little, about {mass}. Stop when the stiffness is right.",
    "heat-usable.rough": "{meaning}. The shorter of two estimates, rounded down, at {air}. Stop at the first sign "
                         "of thickening.",
    "cure-recoat.shut-rough": "the window may close before it surely opens: wash, sand, then coat",
    "dew-blush-look.text": "Water must spread as a film. If it beads, wash again.",
    "trial-mix.text": "Mix at most {most}, in the label's ratio. Start the watch with the first stir.",
    "trial-not-sure.text": "Thick {least} to {most} after mixing: too wide a range to rely on. Type more readings, "
                           "best while the cup gets hotter, or when the mix pulls strings.",
    "trial-usual.far": "far more than tested, so less sure",
    "trial-sheds.rough": "as fast as estimated. A slower loss means a hotter pot",
    "error-cost.short": "{costs}. Up to {loose} of the resin never binds, and no heat can cure it. From memory, for "
                        "an ideal network. No table of strength was found.",
    "error-cost.over": "{costs}. Up to {loose} of the hardener never binds: it blushes and takes up water. From "
                       "memory, for an ideal network. No table of strength was found.",
    "air-handbook.rough": "by the handbook's 403 rule, at {21 degC}: for health only, not against fire",
    "air-dust-room.rough": "a pinch, rounded down: a warning, not a safe amount",
    "usual-product": "{codes}. {about} Your safety data sheet decides.",
    "usual-product.no-codes": "{about} Your safety data sheet decides.",
    "page-not-old": "These results are old. Wait for the new ones.",
}

# the same of sentences whose German says it without a `not`
WITHOUT_NOT = {
    "coats-runs.text": "Roll no more than {heaviest} here, in more coats.",
    "sheathing-pour-out.text": "Do it at once: a film lasts, a pot does not. Squeegee the surplus off, or the cloth "
                               "floats.",
    "own-code.unknown": "This code is not known here, but kept. Look up its words and sign on the safety data sheet.",
    "own-code.letters": "Its letters are not known here. Look them up on the safety data sheet.",
}
