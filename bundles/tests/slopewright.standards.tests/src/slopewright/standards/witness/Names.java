package slopewright.standards.witness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.witness.Entry;

/** Finds in a rule set what the second transcription calls by another name. */
final class Names {

    /**
     * Families (row for both rows, form for both T forms), name in the second transcription, key in the rule set, factor. The key stands
     * after the family where it begins with a dot. A factor makes an offset of one unit from a printed half or whole difference.
     */
    private static final String VALUES = """
        row|inner-unit-to-edge-m|.inner-unit-to-edge-m|1
        row|inner-unit-to-edge-tolerance-m|.inner-unit-to-edge-tolerance-m|1
        row|spacing-m|.unit-spacing-m|1
        row|spacing-tolerance-m|.unit-spacing-tolerance-m|1
        row|reduced.inner-unit-to-edge-m|.reduced-inner-unit-to-edge-m|1
        row|reduced.spacing-m|.reduced-unit-spacing-m|1
        row|convertible.inner-unit-to-edge-m|.enlarged-inner-unit-to-edge-m|1
        row|convertible.spacing-m|.enlarged-unit-spacing-m|1
        row|enlarged.spacing-m|.enlarged-unit-spacing-m|1
        four-unit-row|setting.standard.A-min|.outer-offset-min|-1
        four-unit-row|setting.standard.B-min|.inner-offset-min|-1
        four-unit-row|setting.standard.C-min|.inner-offset-min|1
        four-unit-row|setting.standard.D-min|.outer-offset-min|1
        two-unit-row|setting.standard.A-min|.outer-offset-min|-1
        two-unit-row|setting.standard.B-min|.outer-offset-min|1
        four-unit-row|setting.glide-path.A-min|.glide-path-outer-offset-min|-1
        four-unit-row|setting.glide-path.B-min|.glide-path-inner-offset-min|-1
        four-unit-row|setting.glide-path.C-min|.glide-path-inner-offset-min|1
        four-unit-row|setting.glide-path.D-min|.glide-path-outer-offset-min|1
        four-unit-row|setting.steep-over-4.A-min|.steep-difference-min|-1.5
        four-unit-row|setting.steep-over-4.B-min|.steep-difference-min|-0.5
        four-unit-row|setting.steep-over-4.C-min|.steep-difference-min|0.5
        four-unit-row|setting.steep-over-4.D-min|.steep-difference-min|1.5
        four-unit-row|setting.steep-over-7.A-min|.very-steep-difference-min|-1.5
        four-unit-row|setting.steep-over-7.B-min|.very-steep-difference-min|-0.5
        four-unit-row|setting.steep-over-7.C-min|.very-steep-difference-min|0.5
        four-unit-row|setting.steep-over-7.D-min|.very-steep-difference-min|1.5
        two-unit-row|setting.steep-over-4.A-min|.steep-difference-min|-0.5
        two-unit-row|setting.steep-over-4.B-min|.steep-difference-min|0.5
        two-unit-row|setting.steep-over-7.A-min|.very-steep-difference-min|-0.5
        two-unit-row|setting.steep-over-7.B-min|.very-steep-difference-min|0.5
        four-unit-row|setting.heliport.B-min|helipad.on-slope-sector-min|-0.5
        four-unit-row|setting.heliport.C-min|helipad.on-slope-sector-min|0.5
        two-unit-row|setting.heliport.A-min|helipad.on-slope-sector-min|-0.5
        two-unit-row|setting.heliport.B-min|helipad.on-slope-sector-min|0.5
        row|white-over-red-min|.white-to-red-from-times|1
        row|white-over-red-max|.white-to-red-to-times|1
        row|beam-half-width-deg|.azimuth-coverage-deg|1
        row|useful-range-m|.useful-range-day-m|1
        row|inner-unit-to-edge-ft|.inner-unit-to-edge-ft|1
        row|inner-unit-to-edge-tolerance-up-ft|.inner-unit-to-edge-tolerance-ft|1
        row|reduced.inner-unit-to-edge-ft|.small-runway-inner-unit-to-edge-ft|1
        row|spacing-ft|.unit-spacing-ft|1
        row|spacing-min-ft|.unit-spacing-least-ft|1
        row|spacing-equality-ft|.unit-spacing-equality-ft|1
        all|eye-height-allowance-min|row.boundary-allowance-min|1
        all|level-correction-limit-m|row.level-correction-from-m|1
        all|unit-level-difference-max-m|row.level-difference-m|1
        all|bar-gradient-max-percent|row.lateral-gradient-percent|1
        all|unit-height-max-m|row.maximum-height-above-ground-m|1
        all|taxiway-distance-min-m|row.clearance-to-other-pavement-m|1
        all|azimuth-tolerance-deg|row.azimuth-tolerance-deg|1
        all|transition-min|row.transition-width-min|1
        all|transition-centre-min|row.transition-width-min|1
        all|red-y-max|row.red-chromaticity-y|1
        all|red-y-max|form.red-chromaticity-y|1
        all|adjustable-from-deg|row.setting-range-from-deg|1
        all|adjustable-to-deg|row.setting-range-to-deg|1
        all|setting-accuracy-min|row.setting-accuracy-min|1
        all|vertical-aiming-set-min|row.setting-accuracy-min|1
        all|vertical-aiming-operation-min|row.operation-accuracy-min|1
        all|reset-beyond-min|row.reset-beyond-min|1
        all|axis-turn-max-deg|obstacle.axis-turn-limit-deg|1
        all|power-switch-over-s|standby.instrument-s|1
        all|power-switch-over-hazardous-s|standby.hazardous-terrain-s|1
        form|nominal-eye-height-m|.nominal-eye-height-m|1
        form|eye-height-min-m|.eye-height-from-m|1
        form|eye-height-max-m|.eye-height-to-m|1
        form|spacing-tolerance-percent|.spacing-tolerance-percent|1
        form|lateral-tolerance-m|.leg-to-edge-tolerance-m|1
        form|leg-line-to-edge-m|.leg-to-edge-m|1
        form|bar-unit-inner-offset-m|.bar-inner-offset-m|1
        form|bar-unit-outer-offset-m|.bar-outer-offset-m|1
        form|leg.1.offset-m|.leg-first-offset-m|1
        form|bar.red-top-deg|.red-limit-deg|1
        form|bar.white-top-deg|.beam-top-deg|1
        form|fly-down.top-deg|.beam-top-deg|1
        form|fly-down.2.cut-off-min|.fly-down-step-min|1
        form|fly-down.3.cut-off-min|.fly-down-step-min|2
        form|fly-up.2.cut-off-min|.fly-up-step-min|-1
        form|fly-up.3.cut-off-min|.fly-up-step-min|-2
        form|transition-min|.transition-width-min|1
        form|filter-min-percent|.red-filter-percent|1
        form|band.bars-only.nominal-ft|.nominal-eye-height-m|1
        heliport-sector|on-slope-min|.on-slope-sector-min|1
        heliport-sector|slightly-below-min|.slightly-below-sector-min|1
        heliport-sector|flash-min-hz|.flash-rate-hz|1
        heliport-sector|on-part|.flash-on-percent|0.01
        heliport-sector|modulation-min-percent|.modulation-percent|1
        heliport-sector|transition-min|.transition-width-min|1
        heliport-sector|adjustable-from-deg|.setting-range-from-deg|1
        heliport-sector|adjustable-to-deg|.setting-range-to-deg|1
        heliport-sector|adjustable-accuracy-min|.setting-accuracy-min|1
        heliport-sector|switch-off-tilt-deg|.tilt-switch-off-deg|1
        heliport-sector|floating-tolerance-deg|.floating-deck-beam-deg|1
        heliport-sector|floating-roll-deg|.floating-deck-motion-deg|1
        all|surface.slope-deg|form.surface-slope-deg|1
        all|surface.divergence-deg|form.surface-splay-deg|1
        all|surface.divergence-deg|row.surface-splay-deg|1
        all|surface.divergence-deg|bar.surface-splay-deg|1
        all|surface.divergence-deg|single.surface-splay-deg|1
        all|surface.visual.length-nm|form.surface-length-m|1
        all|surface.instrument.length-nm|form.surface-glide-path-length-m|1
        all|surface.clearance-m|form.surface-clearance-m|1
        all|surface.older-manual.start-m|form.surface-origin-before-m|1
        all|surface.before-row-ft|row.surface-origin-before-m|1
        all|surface.below-unit-deg|row.surface-below-lowest-deg|1
        all|surface.length-sm|row.surface-length-m|1
        all|bar-surface.length-nm|bar.surface-length-m|1
        all|crossing-height-min-ft|crossing-height.least-m|1
        all|crossing-height-max-ft|crossing-height.most-m|1
        all|glide-path.tolerance-ft|row.glide-path-distance-tolerance-ft|1
        all|glide-path.group-4.extra-ft|four-unit-row.group-4-extra-distance-ft|1
        all|glide-path.group-4.tolerance-up-ft|four-unit-row.group-4-distance-tolerance-ft|1
        all|coincidence.angle-deg|coincidence.angle-deg|1
        all|coincidence.height-ft|coincidence.height-m|1
        all|lens-plane-tolerance-in|row.level-difference-m|1
        all|plane-to-runway-tolerance-ft|row.plane-to-centre-line-m|1
        all|line-up-tolerance-in|row.bar-square-tolerance-m|1
        all|hover-min-ft|helipad.hover-height-from-m|1
        all|hover-max-ft|helipad.hover-height-to-m|1
        all|heliport-surface.divergence-deg|pad.surface-splay-deg|1
        all|heliport-surface.below-lowest-deg|pad.surface-below-lowest-deg|1
        bar|setting.standard.near-deg|.near-offset-deg|1
        bar|setting.standard.middle-deg|.middle-offset-deg|1
        bar|setting.standard.far-deg|.far-offset-deg|1
        bar|setting.low-custom.near-deg|.tradition-near-offset-deg|1
        bar|setting.low-custom.far-deg|.tradition-far-offset-deg|1
        bar|upper-path-offset-deg|.upper-path-step-deg|1
        bar|bar-spacing-ft|.bar-spacing-m|1
        bar|bar-spacing-min-ft|.bar-spacing-least-m|1
        bar|bar-spacing-max-ft|.bar-spacing-most-m|1
        bar|near-bar-min-ft|.near-bar-from-m|1
        bar|near-bar-max-ft|.near-bar-to-m|1
        bar|inner-unit-to-edge-ft|.inner-unit-to-edge-m|1
        bar|unit-spacing-ft|.unit-spacing-m|1
        single|inner-unit-to-edge-ft|.unit-to-edge-m|1
        tri-colour|range-day-to-sm|.range-day-m|1
        tri-colour|range-day-from-sm|.useful-range-day-m|1
        tri-colour|range-night-sm|.range-night-m|1
        pulsating|on-path-width-deg|.on-slope-sector-deg|1
        pulsating|frequency-hz|.pulse-rate-hz|1
        pulsating|range-day-sm|.range-day-m|1
        pulsating|range-night-sm|.range-night-m|1
        heliport-pair|spacing-ft|.unit-spacing-m|1
        heliport-pair|on-path-half-min|.on-slope-half-min|1
        heliport-pair|green-width-deg|.green-sector-deg|1
        alignment-panels|range-sm|.range-day-m|1
        alignment-panels|eye-resolution-min|.resolution-min|1
        """;

    private Names() {
    }

    /**
     * One number of the rule set that stands for an entry.
     *
     * @param key        its key
     * @param value      the number in the unit of the entry
     * @param provenance how well it is known
     */
    record Held(String key, double value, Provenance provenance) {
    }

    /** Returns the numbers that a rule set holds for an entry; empty where it has none. */
    static List<Held> held(RuleSet rules, Entry entry) {
        List<Held> found = new ArrayList<>();
        for (String line : VALUES.lines().toList()) {
            String[] cells = line.split("\\|");
            if (cells[1].equals(entry.name()) && families(cells[0]).contains(entry.family())) {
                for (String key : keys(cells[2], entry.family())) {
                    number(rules, key, Double.parseDouble(cells[3]), entry.name()).ifPresent(found::add);
                }
            }
        }
        found.addAll(Tables.held(rules, entry));
        return found;
    }

    private static Optional<Held> number(RuleSet rules, String key, double factor, String name) {
        return rules.covers(key.substring(0, key.indexOf('.'))) || !isFamily(key)
                ? rules.find(key).map(value -> new Held(key, factor * inUnitOf(name, value), value.citation().provenance()))
                : Optional.empty();
    }

    private static boolean isFamily(String key) {
        String head = key.substring(0, key.indexOf('.'));
        return List.of("row", "form", "bar", "single", "pad").stream().anyMatch(group -> families(group).contains(head));
    }

    private static double inUnitOf(String name, CitedValue value) {
        return name.matches(".*-(ft|in|nm|sm)") ? value.printed() : value.value();
    }

    private static List<String> keys(String key, String family) {
        if (key.startsWith(".")) {
            return List.of(family + key);
        }
        String head = key.substring(0, key.indexOf('.'));
        return families(head).stream().map(name -> name + key.substring(head.length())).toList();
    }

    private static List<String> families(String group) {
        return switch (group) {
            case "row" -> List.of("four-unit-row", "two-unit-row");
            case "form" -> List.of("t-form", "t-form-abbreviated");
            case "bar" -> List.of("two-bar", "three-bar");
            case "single" -> List.of("tri-colour", "pulsating");
            case "pad" -> List.of("heliport-pair");
            default -> List.of(group);
        };
    }
}
