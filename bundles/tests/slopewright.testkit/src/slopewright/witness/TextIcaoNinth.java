package slopewright.witness;

/** Annex 14 Vol I 9th ed. and Vol II 4th ed.: what was read again. Cells: name, number, provenance (p, s, d, m), clause. */
final class TextIcaoNinth {
    static final String TEXT = """
        @icao:9th four-unit-row
        inner-unit-to-edge-m|15|p|Fig 5-19
        inner-unit-to-edge-tolerance-m|1|p|Fig 5-19
        spacing-m|9|p|Fig 5-19
        spacing-tolerance-m|1|p|Fig 5-19
        reduced.inner-unit-to-edge-m|10|p|Fig 5-19 f
        reduced.spacing-m|6|p|Fig 5-19 f
        setting.standard.A-min|-30|p|Fig 5-20 A
        setting.standard.B-min|-10|p|Fig 5-20 A
        setting.standard.C-min|10|p|Fig 5-20 A
        setting.standard.D-min|30|p|Fig 5-20 A
        setting.glide-path.A-min|-35|p|Fig 5-20 A note
        setting.glide-path.B-min|-15|p|Fig 5-20 A note
        setting.glide-path.C-min|15|p|Fig 5-20 A note
        setting.glide-path.D-min|35|p|Fig 5-20 A note
        intensity.1.red-cd|15000|p|Fig A2-23
        intensity.1.azimuth-deg|2|p|Fig A2-23, a circle
        intensity.1.elevation-deg|2|p|Fig A2-23, a circle
        intensity.2.red-cd|10000|p|Fig A2-23
        intensity.2.azimuth-deg|4|p|Fig A2-23
        intensity.2.elevation-deg|2.5|p|Fig A2-23
        intensity.3.red-cd|7000|p|Fig A2-23
        intensity.3.azimuth-deg|6|p|Fig A2-23
        intensity.3.elevation-deg|3|p|Fig A2-23
        intensity.4.red-cd|4000|p|Fig A2-23
        intensity.4.azimuth-deg|8|p|Fig A2-23
        intensity.4.elevation-deg|3.5|p|Fig A2-23
        @icao:9th two-unit-row
        inner-unit-to-edge-m|10|p|Fig 5-19
        inner-unit-to-edge-tolerance-m|1|p|Fig 5-19
        spacing-m|6|p|Fig 5-19
        spacing-tolerance-m|1|p|Fig 5-19
        enlarged.inner-unit-to-edge-m|10|p|Fig 5-19 g
        enlarged.spacing-m|9|p|Fig 5-19 g
        convertible.inner-unit-to-edge-m|15|p|Fig 5-19 g, later conversion only
        convertible.spacing-m|9|p|Fig 5-19 g
        setting.standard.A-min|-15|p|Fig 5-20 B
        setting.standard.B-min|15|p|Fig 5-20 B
        intensity.1.red-cd|5000|p|Fig A2-23, brackets
        intensity.1.azimuth-deg|2|p|Fig A2-23
        intensity.1.elevation-deg|2|p|Fig A2-23
        intensity.2.red-cd|3500|p|Fig A2-23, brackets
        intensity.2.azimuth-deg|4|p|Fig A2-23
        intensity.2.elevation-deg|2.5|p|Fig A2-23
        intensity.3.red-cd|2500|p|Fig A2-23, brackets
        intensity.3.azimuth-deg|6|p|Fig A2-23
        intensity.3.elevation-deg|3|p|Fig A2-23
        intensity.4.red-cd|1500|p|Fig A2-23, brackets
        intensity.4.azimuth-deg|8|p|Fig A2-23
        intensity.4.elevation-deg|3.5|p|Fig A2-23
        @icao:9th all
        eye-height-allowance-min|2|p|2.12 e
        level-correction-limit-m|0|p|Fig 5-19 d, no limit printed
        unit-level-difference-max-m|0.05|p|Fig 5-19 e
        bar-gradient-max-percent|1.25|p|Fig 5-19 e
        transition-min|3|p|5.3.5.30
        transition-range-m|300|p|5.3.5.30
        red-y-max|0.320|p|5.3.5.31
        adjustable-from-deg|1.5|p|5.3.5.34
        adjustable-to-deg|4.5|p|5.3.5.34
        white-over-red-min|2|p|Fig A2-23 note 2
        white-over-red-max|6.5|p|Fig A2-23 note 2
        axis-turn-max-deg|5|p|5.3.5.46
        power-switch-over-s|15|p|Table 8-1
        power-switch-over-hazardous-s|1|p|Table 8-1
        surface.visual.1.beyond-d1-m|30|p|Table 5-3, from the indicator
        surface.visual.2.beyond-d1-m|60|p|Table 5-3
        surface.visual.3.beyond-d1-m|60|p|Table 5-3
        surface.visual.4.beyond-d1-m|60|p|Table 5-3
        surface.instrument.1.beyond-d1-m|60|p|Table 5-3
        surface.instrument.2.beyond-d1-m|60|p|Table 5-3
        surface.instrument.3.beyond-d1-m|60|p|Table 5-3
        surface.instrument.4.beyond-d1-m|60|p|Table 5-3
        surface.start-height-m|0|p|Fig 5-21, level of the threshold
        heliport-surface.visual.start-m|3|p|Vol II Table 5-1
        heliport-surface.instrument.start-m|60|p|Vol II Table 5-1
        heliport-surface.visual.divergence-percent|10|p|Vol II Table 5-1
        heliport-surface.instrument.divergence-percent|15|p|Vol II Table 5-1
        heliport-surface.visual.length-m|2500|p|Vol II Table 5-1
        heliport-surface.instrument.length-m|2500|p|Vol II Table 5-1
        @icao:9th wheel-clearance
        row1.minimum-m|3|p|Table 5-2
        row2.minimum-m|4|p|Table 5-2
        row3.minimum-m|5|p|Table 5-2
        row4.minimum-m|6|p|Table 5-2
        row1.minimum-light-m|1.5|p|Table 5-2
        row1.desired-m|6|s|Table 5-2, older edition kept
        row2.desired-m|9|s|Table 5-2, older edition kept; machine-read 6
        row3.desired-m|9|s|Table 5-2, older edition kept; machine-read 6
        row4.desired-m|9|s|Table 5-2
        row1.desired-machine-read-m|6|s|Table 5-2 as machine-read
        row2.desired-machine-read-m|6|s|Table 5-2 as machine-read
        row3.desired-machine-read-m|6|s|Table 5-2 as machine-read
        row4.desired-machine-read-m|9|s|Table 5-2 as machine-read
        @icao:9th t-form
        nominal-eye-height-m|15|p|5.3.5.10 note
        eye-height-min-m|12|p|Fig 5-17 a
        eye-height-max-m|16|p|Fig 5-17 a
        spacing-tolerance-percent|10|p|Fig 5-17 b
        lateral-tolerance-m|3|p|Fig 5-17 c
        leg-line-to-edge-m|30|p|Fig 5-17
        bar-unit-inner-offset-m|6|p|Fig 5-17
        bar-unit-outer-offset-m|12|p|Fig 5-17
        leg.1.offset-m|45|p|Fig 5-17
        leg.2.offset-m|135|p|Fig 5-17
        leg.3.offset-m|225|p|Fig 5-17
        bar-drawn-distance-m|280|p|Fig 5-17
        transition-min|15|p|5.3.5.14
        intensity.day.1.white-cd|80000|p|Fig A2-22
        intensity.day.2.white-cd|72000|p|Fig A2-22
        intensity.day.3.white-cd|40000|p|Fig A2-22
        intensity.day.4.white-cd|24000|p|Fig A2-22
        intensity.day.5.white-cd|8000|p|Fig A2-22
        intensity.day.1.azimuth-deg|1|p|Fig A2-22, read off a graph
        intensity.day.2.azimuth-deg|2|p|Fig A2-22, read off a graph
        intensity.day.3.azimuth-deg|3.7|p|Fig A2-22, read off a graph
        intensity.day.4.azimuth-deg|4.5|p|Fig A2-22, read off a graph
        intensity.day.5.azimuth-deg|5|p|Fig A2-22, read off a graph
        intensity.night.1.white-cd|1000|p|Fig A2-22
        intensity.night.2.white-cd|900|p|Fig A2-22
        intensity.night.3.white-cd|500|p|Fig A2-22
        intensity.night.4.white-cd|300|p|Fig A2-22
        intensity.night.5.white-cd|100|p|Fig A2-22
        intensity.night.5.azimuth-deg|7.5|p|Fig A2-22, read off a graph
        filter-min-percent|15|p|Fig A2-22
        @icao:9th t-form-abbreviated
        nominal-eye-height-m|15|p|5.3.5.10 note
        eye-height-min-m|12|p|Fig 5-17 a
        eye-height-max-m|16|p|Fig 5-17 a
        spacing-tolerance-percent|10|p|Fig 5-17 b
        lateral-tolerance-m|3|p|Fig 5-17 c
        leg-line-to-edge-m|30|p|Fig 5-17
        bar-unit-inner-offset-m|6|p|Fig 5-17
        bar-unit-outer-offset-m|12|p|Fig 5-17
        leg.1.offset-m|45|p|Fig 5-17
        leg.2.offset-m|135|p|Fig 5-17
        leg.3.offset-m|225|p|Fig 5-17
        bar-drawn-distance-m|280|p|Fig 5-17
        transition-min|15|p|5.3.5.14
        intensity.day.1.white-cd|80000|p|Fig A2-22
        intensity.day.2.white-cd|72000|p|Fig A2-22
        intensity.day.3.white-cd|40000|p|Fig A2-22
        intensity.day.4.white-cd|24000|p|Fig A2-22
        intensity.day.5.white-cd|8000|p|Fig A2-22
        intensity.day.1.azimuth-deg|1|p|Fig A2-22, read off a graph
        intensity.day.2.azimuth-deg|2|p|Fig A2-22, read off a graph
        intensity.day.3.azimuth-deg|3.7|p|Fig A2-22, read off a graph
        intensity.day.4.azimuth-deg|4.5|p|Fig A2-22, read off a graph
        intensity.day.5.azimuth-deg|5|p|Fig A2-22, read off a graph
        intensity.night.1.white-cd|1000|p|Fig A2-22
        intensity.night.2.white-cd|900|p|Fig A2-22
        intensity.night.3.white-cd|500|p|Fig A2-22
        intensity.night.4.white-cd|300|p|Fig A2-22
        intensity.night.5.white-cd|100|p|Fig A2-22
        intensity.night.5.azimuth-deg|7.5|p|Fig A2-22, read off a graph
        filter-min-percent|15|p|Fig A2-22
        @icao:9th heliport-sector
        on-slope-min|45|p|Vol II 5.3.6.10-11
        slightly-below-min|15|p|Vol II 5.3.6.10-11
        flash-min-hz|2|p|Vol II 5.3.6.8
        modulation-min-percent|80|p|Vol II 5.3.6.9
        intensity.1.cd|9000|p|Vol II Fig 5-11
        intensity.1.azimuth-deg|3|p|Vol II Fig 5-11
        intensity.1.elevation-deg|2|p|Vol II Fig 5-11
        intensity.2.cd|6375|p|Vol II Fig 5-11
        intensity.2.azimuth-deg|6|p|Vol II Fig 5-11
        intensity.2.elevation-deg|4|p|Vol II Fig 5-11
        intensity.3.cd|3750|p|Vol II Fig 5-11
        intensity.3.azimuth-deg|9|p|Vol II Fig 5-11
        intensity.3.elevation-deg|6|p|Vol II Fig 5-11
        intensity.4.cd|1875|p|Vol II Fig 5-11
        intensity.4.azimuth-deg|12|p|Vol II Fig 5-11
        intensity.4.elevation-deg|8|p|Vol II Fig 5-11
        intensity.5.cd|375|p|Vol II Fig 5-11
        intensity.5.azimuth-deg|15|p|Vol II Fig 5-11
        intensity.5.elevation-deg|10|p|Vol II Fig 5-11
        """;

    private TextIcaoNinth() {
    }
}
