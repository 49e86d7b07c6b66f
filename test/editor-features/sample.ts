/** A survey with most of what the language has, for tests that run over every prefix. */
export const sample = `use "house"                                          // the firm's own words

survey "TC-2026-041" pre-purchase {
    client:   "R. Adeyemi"
    surveyor: L-Norgaard
    attended 2026-10-06 ashore "Tern Creek, 4 °C"
    unseen "Inside of the holding tank": "no plate is fitted"
    photos:   "photos"
}

vessel "Marram" {
    type: sailing-yacht  hull-number: "TCB12045K989"
    length-overall: 40 ft  beam: 3.85 m  draft: 5 ft 9 in
}

/* Systems
   follow. */
system skin "Through-hulls and sea valves" {
    through-hull TH4 "Old heads discharge" { size: 1-1/2 in  metal: bronze  below-waterline: 14 in }
    valve SV4 { size: 1½ in  metal: brass  pattern: gate-valve }
    hose H9 { bore: 38 mm +/- 0.5 mm  reinforcement: wire }

    run DIS4 "Heads discharge": TH4 -> { clamps: 2 } SV4 -> H9 -> open

    finding F3 "Left open-ended é 😀" on TH4, SV4, H9 {
        answers:   abandoned-opening-not-closed
        urgency:   within-days 30
        seen:      """
            The hose is cut {H9.bore} inboard and
            hangs open.
        """
        because:   "A {TH4.size} opening {TH4.below-waterline} down admits {TH4.flooding-rate}."
        recommend: phrase blank-off-or-remove
        cites:     "ISO 9093" "5"
        cost:      250 USD..600 USD
        photo "photos/0412.jpg" "Cut hose"
    }
    accept hose-and-spigot-differ on H9, SV4 because "On the list."
    contact SV4, TH4 { wetted: yes }
    reading M1 "Moisture" on TH4 { measures: moisture  row "frame 7": 14 %, 15 % }
}

valuation "Value" { comparable C1 "Dulse" { adjust "engine": -2500 USD } }
kind gizmo "Gizmo" is fitting { takes width: length 1 mm..5 mm "Width"  takes looks: word good, bad }
words moods "Moods" { glad "in good cheer"  sad }
phrase mine "Renew {what} of {H9}."
material mud "Mud" { class: other }
person A-B "Ann" {}
`;
