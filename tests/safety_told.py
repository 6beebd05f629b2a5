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
}
