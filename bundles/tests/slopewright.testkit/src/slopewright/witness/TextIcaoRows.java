package slopewright.witness;

/** Annex 14 Vol I 5th ed.: rows, tables 5-2 and 5-3. Cells: name, number, provenance (p, s, d, m), clause. */
final class TextIcaoRows {
    static final String TEXT = """
        @icao:5th four-unit-row
        units|4|p|5.3.5.23-24
        inner-unit-to-edge-m|15|p|Fig 5-19
        inner-unit-to-edge-tolerance-m|1|p|Fig 5-19
        spacing-m|9|p|Fig 5-19
        spacing-tolerance-m|1|p|Fig 5-19
        reduced.inner-unit-to-edge-m|10|p|Fig 5-19 f, code 1 or 2
        reduced.spacing-m|6|p|Fig 5-19 f, code 1 or 2
        setting.standard.A-min|-30|p|Fig 5-20; on-slope offsets as printed in Indonesia KP 2/2013
        setting.standard.B-min|-10|p|Fig 5-20
        setting.standard.C-min|10|p|Fig 5-20
        setting.standard.D-min|30|p|Fig 5-20
        setting.glide-path.A-min|-35|p|Fig 5-20 note
        setting.glide-path.B-min|-15|p|Fig 5-20 note
        setting.glide-path.C-min|15|p|Fig 5-20 note
        setting.glide-path.D-min|35|p|Fig 5-20 note
        setting.heliport.A-min|-42.5|m|Vol II 5.3.5.2 a, 45'; outer step 20' by decision
        setting.heliport.B-min|-22.5|d|Vol II 5.3.5.2 a, half of 45'
        setting.heliport.C-min|22.5|d|Vol II 5.3.5.2 a, half of 45'
        setting.heliport.D-min|42.5|m|Vol II 5.3.5.2 a, 45'; outer step 20' by decision
        setting.steep-over-4.A-min|-45|m|pack 3.2, equal steps of 30'
        setting.steep-over-4.B-min|-15|m|pack 3.2
        setting.steep-over-4.C-min|15|m|pack 3.2
        setting.steep-over-4.D-min|45|m|pack 3.2
        setting.steep-over-7.A-min|-90|m|pack 3.2, equal steps of 1 degree
        setting.steep-over-7.B-min|-30|m|pack 3.2
        setting.steep-over-7.C-min|30|m|pack 3.2
        setting.steep-over-7.D-min|90|m|pack 3.2
        surface.visual.2.slope-offset-deg|-0.57|p|Table 5-3
        surface.visual.3.slope-offset-deg|-0.57|p|Table 5-3
        surface.visual.4.slope-offset-deg|-0.57|p|Table 5-3
        surface.instrument.1.slope-offset-deg|-0.57|p|Table 5-3
        surface.instrument.2.slope-offset-deg|-0.57|p|Table 5-3
        surface.instrument.3.slope-offset-deg|-0.57|p|Table 5-3
        surface.instrument.4.slope-offset-deg|-0.57|p|Table 5-3
        heliport-surface.slope-offset-deg|-0.57|p|Vol II Table 5-1
        white-over-red-min|2|s|Fig A2-23 note, as a national text prints it (jp-117)
        white-over-red-max|6.5|s|Fig A2-23 note, as a national text prints it (jp-117)
        peak-red-cd|15000|m|Fig A2-23
        beam-half-width-deg|8|m|Doc 9157-4
        useful-range-m|8000|s|pack 3.4.10
        @icao:5th two-unit-row
        units|2|p|5.3.5.23-24
        inner-unit-to-edge-m|10|p|Fig 5-19
        inner-unit-to-edge-tolerance-m|1|p|Fig 5-19
        spacing-m|6|p|Fig 5-19
        spacing-tolerance-m|1|p|Fig 5-19
        enlarged.inner-unit-to-edge-m|10|p|Fig 5-19 g
        enlarged.spacing-m|9|p|Fig 5-19 g
        convertible.inner-unit-to-edge-m|15|p|Fig 5-19 g, later conversion only
        convertible.spacing-m|9|p|Fig 5-19 g
        setting.standard.A-min|-15|p|Fig 5-20
        setting.standard.B-min|15|p|Fig 5-20
        setting.glide-path.A-min|-15|d|Fig 5-20 prints no other setting for two units
        setting.glide-path.B-min|15|d|Fig 5-20 prints no other setting for two units
        setting.heliport.A-min|-22.5|d|Vol II 5.3.5.2 a, half of 45'
        setting.heliport.B-min|22.5|d|Vol II 5.3.5.2 a, half of 45'
        setting.steep-over-4.A-min|-22.5|m|pack 3.2, difference 45'
        setting.steep-over-4.B-min|22.5|m|pack 3.2
        setting.steep-over-7.A-min|-30|m|pack 3.2, difference 1 degree
        setting.steep-over-7.B-min|30|m|pack 3.2
        surface.visual.1.slope-offset-deg|-0.9|p|Table 5-3
        surface.visual.2.slope-offset-deg|-0.9|p|Table 5-3
        surface.instrument.1.slope-offset-deg|-0.9|p|Table 5-3
        surface.instrument.2.slope-offset-deg|-0.9|p|Table 5-3
        heliport-surface.slope-offset-deg|-0.9|p|Vol II Table 5-1
        @icao:5th all
        eye-height-allowance-min|2|p|2.12 e (B - 2', A - 2')
        level-correction-limit-m|0.3|m|Doc 9157-4 8.3
        unit-level-difference-max-m|0.05|p|Fig 5-19 e
        bar-gradient-max-percent|1.25|p|Fig 5-19 e
        unit-height-max-m|0.9|m|Doc 9157-4 ch. 8
        taxiway-distance-min-m|14|s|Doc 9157-4 ch. 8
        azimuth-tolerance-deg|0.5|m|Doc 9157-4 ch. 8
        transition-min|3|p|5.3.5.29
        transition-range-m|300|p|5.3.5.29
        red-y-max|0.320|p|5.3.5.30
        adjustable-from-deg|1.5|p|5.3.5.33
        adjustable-to-deg|4.5|p|5.3.5.33
        colour-sample-off-transition-deg|0.5|p|App 1, 2.2.5
        setting-accuracy-min|1|m|Doc 9157-4 / CAP 168
        reset-beyond-min|3|m|Doc 9157-4 / CAP 168
        axis-turn-max-deg|5|p|5.3.5.45
        power-switch-over-s|15|p|Table 8-1
        power-switch-over-hazardous-s|1|p|Table 8-1
        surface.visual.1.inner-edge-m|60|p|Table 5-3
        surface.visual.2.inner-edge-m|80|p|Table 5-3
        surface.visual.3.inner-edge-m|150|p|Table 5-3
        surface.visual.4.inner-edge-m|150|p|Table 5-3
        surface.instrument.1.inner-edge-m|150|p|Table 5-3
        surface.instrument.2.inner-edge-m|150|p|Table 5-3
        surface.instrument.3.inner-edge-m|300|p|Table 5-3
        surface.instrument.4.inner-edge-m|300|p|Table 5-3
        surface.visual.1.start-m|30|p|Table 5-3, before the threshold
        surface.visual.2.start-m|60|p|Table 5-3
        surface.visual.3.start-m|60|p|Table 5-3
        surface.visual.4.start-m|60|p|Table 5-3
        surface.instrument.1.start-m|60|p|Table 5-3
        surface.instrument.2.start-m|60|p|Table 5-3
        surface.instrument.3.start-m|60|p|Table 5-3
        surface.instrument.4.start-m|60|p|Table 5-3
        surface.visual.divergence-percent|10|p|Table 5-3
        surface.instrument.divergence-percent|15|p|Table 5-3
        surface.visual.1.length-m|7500|p|Table 5-3
        surface.visual.2.length-m|7500|p|Table 5-3
        surface.visual.3.length-m|15000|p|Table 5-3
        surface.visual.4.length-m|15000|p|Table 5-3
        surface.instrument.1.length-m|7500|p|Table 5-3
        surface.instrument.2.length-m|7500|p|Table 5-3
        surface.instrument.3.length-m|15000|p|Table 5-3
        surface.instrument.4.length-m|15000|p|Table 5-3
        heliport-surface.visual.start-m|3|p|Vol II Table 5-1
        heliport-surface.instrument.start-m|60|p|Vol II Table 5-1
        heliport-surface.visual.divergence-percent|10|p|Vol II Table 5-1
        heliport-surface.instrument.divergence-percent|15|p|Vol II Table 5-1
        heliport-surface.visual.length-m|2500|p|Vol II Table 5-1
        heliport-surface.instrument.length-m|2500|p|Vol II Table 5-1
        @icao:5th wheel-clearance
        row1.eye-to-wheel-below-m|3|p|Table 5-2
        row2.eye-to-wheel-below-m|5|p|Table 5-2
        row3.eye-to-wheel-below-m|8|p|Table 5-2
        row4.eye-to-wheel-below-m|14|p|Table 5-2
        row1.desired-m|6|p|Table 5-2
        row2.desired-m|9|p|Table 5-2
        row3.desired-m|9|p|Table 5-2
        row4.desired-m|9|p|Table 5-2
        row1.minimum-m|3|p|Table 5-2
        row2.minimum-m|4|p|Table 5-2
        row3.minimum-m|5|p|Table 5-2
        row4.minimum-m|6|p|Table 5-2
        row1.minimum-light-m|1.5|p|Table 5-2 note e, light non-turbojet
        """;

    private TextIcaoRows() {
    }
}
