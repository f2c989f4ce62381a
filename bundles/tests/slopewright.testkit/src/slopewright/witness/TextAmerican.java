package slopewright.witness;

/** United States: 2010 set and the refinements of 2022. Cells: name, number, provenance (p, s, d, m), clause. */
final class TextAmerican {
    static final String TEXT = """
        @faa:2010 all
        eye-height-allowance-min|0|d|WE-1, TCH on the lowest on-course signal
        surface.before-row-ft|300|m|AC 150/5340-30, 5.4
        surface.below-unit-deg|1|m|5.5; Order 8200.1 7.10 says 1 degree below the path
        surface.divergence-deg|10|p|Order 8200.1 7.10, 5.7
        surface.length-sm|4|m|5.6
        bar-surface.length-nm|4|p|AIM 2-1-2 a (2/19/04)
        group.1.cockpit-to-wheel-max-ft|10|m|4.2
        group.2.cockpit-to-wheel-max-ft|15|m|4.2
        group.3.cockpit-to-wheel-max-ft|20|m|4.2
        group.4.cockpit-to-wheel-over-ft|25|m|4.2
        group.1.crossing-height-ft|40|m|4.2
        group.2.crossing-height-ft|45|m|4.2
        group.3.crossing-height-ft|50|m|4.2
        group.4.crossing-height-ft|75|m|4.2
        group.1.crossing-tolerance-up-ft|5|m|4.2
        group.2.crossing-tolerance-up-ft|5|m|4.2
        group.3.crossing-tolerance-up-ft|5|m|4.2
        group.4.crossing-tolerance-up-ft|5|m|4.2
        group.1.crossing-tolerance-down-ft|20|m|4.2
        group.2.crossing-tolerance-down-ft|20|m|4.2
        group.3.crossing-tolerance-down-ft|15|m|4.2
        group.4.crossing-tolerance-down-ft|15|m|4.2
        crossing-height-min-ft|25|p|Order 8200.1 7.10
        crossing-height-max-ft|75|p|Order 8200.1 7.10
        glide-path.tolerance-ft|30|p|UFC 12-3.1.1
        glide-path.group-4.extra-ft|300|p|UFC 12-3.1.1
        glide-path.group-4.tolerance-up-ft|50|p|UFC 12-3.1.1
        coincidence.angle-deg|0.2|s|Order 8260.19 as quoted
        coincidence.height-ft|3|s|Order 8260.19 as quoted
        azimuth-tolerance-deg|0.5|p|UFC 12-3.2
        lens-plane-tolerance-in|1|p|UFC 12-3.2
        plane-to-runway-tolerance-ft|1|p|UFC 12-3.2
        line-up-tolerance-in|6|p|UFC 12-3.2; 3-7.2 says 1
        hover-min-ft|3|p|AC 150/5390-2B 213, 313
        hover-max-ft|8|p|AC 150/5390-2B 213, 313
        heliport-surface.divergence-deg|10|p|AC 150/5390-2B 213, 313
        heliport-surface.below-lowest-deg|1|p|AC 150/5390-2B 213, 313
        angle-tolerance-deg|0.2|m|Order 8200.1 ch. 7
        @faa:2010 four-unit-row
        units|4|p|AIM 2-1-2 b
        inner-unit-to-edge-ft|50|p|UFC 12-3.2
        inner-unit-to-edge-tolerance-up-ft|10|p|UFC 12-3.2
        reduced.inner-unit-to-edge-ft|30|s|4.3.7, small runways
        spacing-ft|30|p|UFC 12-3.2
        spacing-min-ft|20|p|UFC 12-3.2
        spacing-equality-ft|1|p|UFC 12-3.2
        setting.standard.A-min|-30|s|4.1, farthest from the runway (US box 4)
        setting.standard.B-min|-10|s|4.1 (US box 3)
        setting.standard.C-min|10|s|4.1 (US box 2)
        setting.standard.D-min|30|s|4.1, nearest the runway (US box 1)
        setting.glide-path.A-min|-35|s|4.1, group 4 beside an ILS
        setting.glide-path.B-min|-15|s|4.1
        setting.glide-path.C-min|15|s|4.1
        setting.glide-path.D-min|35|s|4.1
        setting.heliport.A-min|-42.5|m|2.10, 45'; outer step by decision
        setting.heliport.B-min|-22.5|s|2.10, 45'
        setting.heliport.C-min|22.5|s|2.10, 45'
        setting.heliport.D-min|42.5|m|2.10, 45'; outer step by decision
        @faa:2010 two-unit-row
        units|2|p|AIM 2-1-2 b
        inner-unit-to-edge-ft|50|p|UFC 12-3.2
        reduced.inner-unit-to-edge-ft|30|s|4.3.7
        spacing-ft|30|p|UFC 12-3.2
        spacing-min-ft|20|p|UFC 12-3.2
        setting.standard.A-min|-15|s|4.1, farthest
        setting.standard.B-min|15|s|4.1, nearest
        setting.glide-path.A-min|-15|s|4.1, no other printed
        setting.glide-path.B-min|15|s|4.1, no other printed
        setting.heliport.A-min|-22.5|s|2.10, 45'
        setting.heliport.B-min|22.5|s|2.10, 45'
        @faa:2010 two-bar
        setting.standard.near-deg|-0.25|m|3.2.9, by decision
        setting.standard.far-deg|0.25|m|3.2.9, by decision
        setting.low-custom.near-deg|-0.5|m|3.2.9, 2.5 at a 3 degree site
        setting.low-custom.far-deg|0|m|3.2.9, 3.0 at a 3 degree site
        bar-spacing-ft|700|m|3.3.4
        bar-spacing-min-ft|500|s|3.3.3
        bar-spacing-max-ft|1000|s|3.3.3
        near-bar-min-ft|125|s|3.3.3
        near-bar-max-ft|800|s|3.3.3
        near-bar-typical-ft|600|m|3.3.6
        far-bar-typical-ft|1300|m|3.3.6
        inner-unit-to-edge-ft|50|m|3.3.7
        unit-spacing-ft|16|m|3.3.7
        @faa:2010 three-bar
        setting.standard.near-deg|-0.25|m|3.2.10
        setting.standard.middle-deg|0|m|3.2.10
        setting.standard.far-deg|0.25|m|3.2.10
        upper-path-offset-deg|0.25|p|3.2.3
        bar-spacing-ft|700|m|3.3.4
        bar-spacing-min-ft|500|s|3.3.3
        bar-spacing-max-ft|1000|s|3.3.3
        near-bar-typical-ft|600|m|3.3.6
        middle-bar-typical-ft|1300|m|3.3.6
        far-bar-typical-ft|2000|m|3.3.6
        inner-unit-to-edge-ft|50|m|3.3.7
        unit-spacing-ft|16|m|3.3.7
        @faa:2010 tri-colour
        units|1|p|2.5
        inner-unit-to-edge-ft|50|m|none printed for one unit; as 3.3.7
        green-width-from-deg|0.5|m|2.5
        green-width-to-deg|1.5|m|2.5
        range-day-from-sm|0.5|p|6.1
        range-day-to-sm|1|p|6.1
        range-night-sm|5|p|6.1
        @faa:2010 pulsating
        units|1|p|2.6
        inner-unit-to-edge-ft|50|m|none printed for one unit; as 3.3.7
        on-path-width-deg|0.35|m|6.10
        frequency-hz|2.25|s|2.6
        range-day-sm|4|p|6.5
        range-night-sm|10|p|6.5
        azimuth-wedge-deg|16|s|6.7
        @faa:2010 heliport-sector
        units|1|p|2.10
        on-slope-min|45|p|2.10
        slightly-below-min|15|p|2.10
        flash-min-hz|2|p|2.10
        modulation-min-percent|80|p|2.10
        @faa:2010 heliport-pair
        units|2|p|7.2
        spacing-ft|20|p|7.4
        usual-slope-deg|6|p|7.3
        on-path-half-min|15|s|7.6
        green-width-deg|2|s|7.7
        tilt-delay-s|15|s|4.4.8
        @faa:2010 alignment-panels
        panels|3|s|2.7
        range-sm|0.75|p|6.11
        rule-rise-per-spacing|0.05|s|6.13, 1 in 20
        eye-resolution-min|1|d|3.3
        @faa:2022 all
        surface.before-row-ft|300|s|JO 6850.2C 501-506, restated
        surface.below-unit-deg|1|s|JO 6850.2C 501-506, restated
        surface.divergence-deg|10|s|JO 6850.2C 501-506, restated
        surface.length-sm|4|s|JO 6850.2C 501-506, restated
        glide-path.tolerance-ft|30|s|JO 6850.2C 502
        glide-path.group-4.extra-ft|300|s|JO 6850.2C 502
        glide-path.group-4.tolerance-up-ft|50|s|JO 6850.2C 502
        lens-plane-tolerance-in|1|s|JO 6850.2C 506 d
        plane-to-runway-tolerance-ft|1|s|JO 6850.2C 506 d
        transition-centre-min|3|s|AC 150/5345-28H 3.2.1
        transition-edge-min|5|s|AC 150/5345-28H 3.2.1
        vertical-aiming-set-min|2|p|MIL-HDBK-1023/4 Table A-5
        vertical-aiming-operation-min|6|p|MIL-HDBK-1023/4 Table A-5
        azimuth-seen-led-deg|10.5|s|JO 6850.2C 504 b
        azimuth-seen-filament-deg|14|s|JO 6850.2C 504 b
        @faa:2022 four-unit-row
        inner-unit-to-edge-ft|50|s|JO 6850.2C 506
        inner-unit-to-edge-tolerance-up-ft|25|s|JO 6850.2C 506
        spacing-ft|30|s|JO 6850.2C 506
        spacing-tolerance-ft|1|s|JO 6850.2C 506
        setting.standard.A-min|-30|s|JO 6850.2C Table 5-2
        setting.standard.B-min|-10|s|JO 6850.2C Table 5-2
        setting.standard.C-min|10|s|JO 6850.2C Table 5-2
        setting.standard.D-min|30|s|JO 6850.2C Table 5-2
        setting.glide-path.A-min|-35|s|JO 6850.2C Table 5-2, group 4
        setting.glide-path.B-min|-15|s|JO 6850.2C Table 5-2, group 4
        setting.glide-path.C-min|15|s|JO 6850.2C Table 5-2, group 4
        setting.glide-path.D-min|35|s|JO 6850.2C Table 5-2, group 4
        intensity.1.white-cd|30000|s|AC 150/5345-28H Fig 3-1
        intensity.1.red-cd|15000|s|AC 150/5345-28H Fig 3-1
        intensity.1.azimuth-deg|2|s|AC 150/5345-28H Fig 3-1
        intensity.1.elevation-deg|2|s|AC 150/5345-28H Fig 3-1
        intensity.2.white-cd|20000|s|AC 150/5345-28H Fig 3-1
        intensity.2.red-cd|10000|s|AC 150/5345-28H Fig 3-1
        intensity.2.azimuth-deg|4|s|AC 150/5345-28H Fig 3-1
        intensity.2.elevation-deg|2.5|s|AC 150/5345-28H Fig 3-1
        intensity.3.white-cd|14000|s|AC 150/5345-28H Fig 3-1
        intensity.3.red-cd|7000|s|AC 150/5345-28H Fig 3-1
        intensity.3.azimuth-deg|6|s|AC 150/5345-28H Fig 3-1
        intensity.3.elevation-deg|3|s|AC 150/5345-28H Fig 3-1
        intensity.4.white-cd|8000|s|AC 150/5345-28H Fig 3-1
        intensity.4.red-cd|4000|s|AC 150/5345-28H Fig 3-1
        intensity.4.azimuth-deg|8|s|AC 150/5345-28H Fig 3-1
        intensity.4.elevation-deg|3.5|s|AC 150/5345-28H Fig 3-1
        intensity.5.white-cd|5000|s|AC 150/5345-28H Fig 3-1
        intensity.5.red-cd|2500|s|AC 150/5345-28H Fig 3-1
        intensity.5.azimuth-deg|10|s|AC 150/5345-28H Fig 3-1
        intensity.5.elevation-deg|4|s|AC 150/5345-28H Fig 3-1
        """;

    private TextAmerican() {
    }
}
