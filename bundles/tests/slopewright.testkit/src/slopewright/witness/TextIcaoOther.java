package slopewright.witness;

/** Annex 14 5th ed. Vol I and 3rd ed. Vol II: T forms and heliport sector unit. Cells: name, number, provenance (p, s, d, m), clause. */
final class TextIcaoOther {
    static final String TEXT = """
        @icao:5th t-form
        units|20|p|5.3.5.6
        nominal-eye-height-m|15|p|5.3.5.9 note
        eye-height-min-m|12|p|Fig 5-17 a
        eye-height-max-m|16|p|Fig 5-17 a
        spacing-tolerance-percent|10|p|Fig 5-17 b
        lateral-tolerance-m|3|p|Fig 5-17 c
        leg-line-to-edge-m|30|m|Fig 5-17
        bar-unit-inner-offset-m|6|m|Fig 5-17, from the leg line
        bar-unit-outer-offset-m|12|m|Fig 5-17, from the leg line
        leg.1.offset-m|45|m|Fig 5-17
        leg.2.offset-m|135|m|Fig 5-17, 45 + 90
        leg.3.offset-m|225|m|Fig 5-17, 45 + 90 + 90
        bar-drawn-distance-m|280|m|Fig 5-17 at 3 degrees, level, 15 m
        bar.red-top-deg|1.9|p|5.3.5.11, 1 deg 54'
        bar.white-top-deg|6|p|5.3.5.11
        fly-down.top-deg|6|p|5.3.5.11, .20
        fly-down.1.cut-off-min|0|p|5.3.5.20, above the slope
        fly-down.2.cut-off-min|7|p|5.3.5.20
        fly-down.3.cut-off-min|14|p|5.3.5.20
        fly-up.1.cut-off-min|0|p|5.3.5.20
        fly-up.2.cut-off-min|-5|p|5.3.5.20
        fly-up.3.cut-off-min|-10|p|5.3.5.20
        band.bars-only.from-m|13|p|5.3.5.9 note
        band.bars-only.to-m|17|p|5.3.5.9 note
        band.fly-down-1.to-m|22|p|5.3.5.9 note
        band.fly-down-2.to-m|28|p|5.3.5.9 note
        band.fly-down-3.to-m|54|p|5.3.5.9 note
        transition-min|15|p|5.3.5.13
        surface.visual.2.slope-deg|1.9|p|Table 5-3
        surface.visual.3.slope-deg|1.9|p|Table 5-3
        surface.visual.4.slope-deg|1.9|p|Table 5-3
        surface.instrument.2.slope-deg|1.9|p|Table 5-3
        surface.instrument.3.slope-deg|1.9|p|Table 5-3
        surface.instrument.4.slope-deg|1.9|p|Table 5-3
        surface.visual.2.inner-edge-m|150|p|Table 5-3 note a
        surface.visual.2.length-m|15000|p|Table 5-3 note b
        surface.instrument.2.length-m|15000|p|Table 5-3 note b
        @icao:5th t-form-abbreviated
        units|10|p|5.3.5.7
        nominal-eye-height-m|15|p|5.3.5.9 note
        eye-height-min-m|12|p|Fig 5-17 a
        eye-height-max-m|16|p|Fig 5-17 a
        spacing-tolerance-percent|10|p|Fig 5-17 b
        lateral-tolerance-m|3|p|Fig 5-17 c
        leg-line-to-edge-m|30|m|Fig 5-17
        bar-unit-inner-offset-m|6|m|Fig 5-17, from the leg line
        bar-unit-outer-offset-m|12|m|Fig 5-17, from the leg line
        leg.1.offset-m|45|m|Fig 5-17
        leg.2.offset-m|135|m|Fig 5-17, 45 + 90
        leg.3.offset-m|225|m|Fig 5-17, 45 + 90 + 90
        bar-drawn-distance-m|280|m|Fig 5-17 at 3 degrees, level, 15 m
        bar.red-top-deg|1.9|p|5.3.5.11, 1 deg 54'
        bar.white-top-deg|6|p|5.3.5.11
        fly-down.top-deg|6|p|5.3.5.11, .20
        fly-down.1.cut-off-min|0|p|5.3.5.20, above the slope
        fly-down.2.cut-off-min|7|p|5.3.5.20
        fly-down.3.cut-off-min|14|p|5.3.5.20
        fly-up.1.cut-off-min|0|p|5.3.5.20
        fly-up.2.cut-off-min|-5|p|5.3.5.20
        fly-up.3.cut-off-min|-10|p|5.3.5.20
        band.bars-only.from-m|13|p|5.3.5.9 note
        band.bars-only.to-m|17|p|5.3.5.9 note
        band.fly-down-1.to-m|22|p|5.3.5.9 note
        band.fly-down-2.to-m|28|p|5.3.5.9 note
        band.fly-down-3.to-m|54|p|5.3.5.9 note
        transition-min|15|p|5.3.5.13
        surface.visual.2.slope-deg|1.9|p|Table 5-3
        surface.visual.3.slope-deg|1.9|p|Table 5-3
        surface.visual.4.slope-deg|1.9|p|Table 5-3
        surface.instrument.2.slope-deg|1.9|p|Table 5-3
        surface.instrument.3.slope-deg|1.9|p|Table 5-3
        surface.instrument.4.slope-deg|1.9|p|Table 5-3
        surface.visual.2.inner-edge-m|150|p|Table 5-3 note a
        surface.visual.2.length-m|15000|p|Table 5-3 note b
        surface.instrument.2.length-m|15000|p|Table 5-3 note b
        @icao:5th heliport-sector
        units|1|p|Vol II 5.3.5.6
        on-slope-min|45|p|Vol II 5.3.5.10
        slightly-below-min|15|p|Vol II 5.3.5.11
        flash-min-hz|2|p|Vol II 5.3.5.8
        on-part|0.5|p|Vol II 5.3.5.9, 1:1
        modulation-min-percent|80|p|Vol II 5.3.5.9
        transition-min|3|p|Vol II 5.3.5.13
        filter-min-percent|15|p|Vol II 5.3.5.14
        adjustable-from-deg|1|p|Vol II 5.3.5.17
        adjustable-to-deg|12|p|Vol II 5.3.5.17
        adjustable-accuracy-min|5|p|Vol II 5.3.5.17
        switch-off-tilt-deg|0.5|p|Vol II 5.3.5.19 a
        floating-tolerance-deg|0.25|p|Vol II 5.3.5.21
        floating-roll-deg|3|p|Vol II 5.3.5.21
        heliport-surface.slope-offset-deg|-0.65|p|Vol II Table 5-1, A the upper limit of below slope
        """;

    private TextIcaoOther() {
    }
}
