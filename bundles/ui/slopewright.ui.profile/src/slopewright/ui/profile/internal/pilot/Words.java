package slopewright.ui.profile.internal.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import slopewright.drawing.pilot.LightMix;
import slopewright.geometry.Curvature;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.LightRhythm;
import slopewright.siting.Meaning;
import slopewright.siting.SeenUnit;
import slopewright.siting.range.RangeEstimate;
import slopewright.standards.Provenance;
import slopewright.ui.MessageTexts;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** Says in words what the pilot sees. */
final class Words {

    private static final double ANGLE_STEPS = 1000;

    private final Sight sight;
    private final QuantityFormat format = QuantityFormat.preferred();

    Words(Sight sight) {
        this.sight = sight;
    }

    /** Returns a meaning in a word or two. */
    static String brief(Meaning meaning) {
        return Messages.get("pilot.brief." + meaning.key());
    }

    /** Returns what the pattern tells. */
    String meaning() {
        if (sight.isPast()) {
            return Messages.get("pilot.words.past");
        }
        List<String> parts = new ArrayList<>();
        for (Map.Entry<String, Meaning> path : sight.observation().meanings().entrySet()) {
            String text = Messages.get("pilot.meaning." + path.getValue().key());
            parts.add(path.getKey().isEmpty() ? text : Messages.get("pilot.words.path", Messages.get("pilot.path." + path.getKey()), text));
        }
        return String.join("; ", parts);
    }

    /** Returns everything that is to be said, a line each. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(place());
        if (!sight.isPast()) {
            lines.add(Messages.get("pilot.words.elevation", angle(sight.observation().elevationDeg()),
                    angle(sight.indicator().siting().slopeDeg())));
        }
        sight.seen().forEach(seenUnit -> lines.add(unit(seenUnit)));
        beside().ifPresent(lines::add);
        sight.observation().remarks().forEach(remark -> lines.add(MessageTexts.of(remark)));
        rhythm().ifPresent(lines::add);
        sight.indicator().terrain().forEach(model -> lines.add(MessageTexts.of(Message.of("drawing.pilot.terrain",
                new Argument.Name(Objects.toString(model.block().getName(), "-")),
                slopewright.messages.Words.m(model.verticalAccuracyM())))));
        lines.addAll(range());
        lines.add(Messages.get("pilot.words.refraction", MessageTexts.renderer().fixed(Curvature.USUAL_REFRACTION, 2)));
        lines.add(Messages.get("pilot.words.size"));
        return lines;
    }

    private String place() {
        double right = sight.eye().rightM();
        String side = Math.abs(right) < 0.05 ? Messages.get("pilot.words.on-axis")
                : Messages.get(right < 0 ? "pilot.words.left" : "pilot.words.right", length(Math.abs(right)));
        String origin = Messages.get(sight.indicator().atRunway() ? "pilot.words.threshold" : "pilot.words.hover-point");
        double before = -sight.eye().alongM();
        return Messages.get(before < 0 ? "pilot.words.behind" : "pilot.words.before", length(Math.abs(before)), origin, side,
                length(sight.eye().heightM()));
    }

    private String length(double metres) {
        return format.showWithUnit(Math.round(metres * 10) / 10.0, Quantity.LENGTH);
    }

    private String angle(double degrees) {
        return format.show(Math.round(degrees * ANGLE_STEPS) / ANGLE_STEPS, Quantity.ANGLE) + (format.show(1, Quantity.ANGLE).contains("°")
                ? "" : "°");
    }

    private String unit(SeenUnit seen) {
        if (seen.offsetMin().isPresent()) {
            double offset = seen.offsetMin().getAsDouble();
            String where = Double.isNaN(offset) ? Messages.get("pilot.words.not-seen") : Math.abs(offset) < 0.05
                    ? Messages.get("pilot.words.in-line")
                    : Messages.get(offset > 0 ? "pilot.words.above-line" : "pilot.words.below-line",
                            MessageTexts.renderer().fixed(Math.abs(offset), 1) + "′");
            return Messages.get("pilot.words.panel", seen.unit().id(), where);
        }
        if (Double.isNaN(seen.elevationDeg())) {
            return Messages.get("pilot.words.unit-past", seen.unit().id());
        }
        LightMix mix = LightMix.of(seen);
        String shown = !mix.isMixed() ? light(seen.light())
                : Messages.get("pilot.words.mix", light(mix.below()), light(mix.above()),
                        String.valueOf(Math.round(mix.aboveShare() * 100)));
        String weak = sight.strength(seen).orElse(0) < 0 ? Messages.get("pilot.words.too-weak") : "";
        String beside = sight.isBeside(seen) ? Messages.get("pilot.words.outside-beam") : "";
        return Messages.get("pilot.words.unit", seen.unit().id(), shown, angle(seen.elevationDeg())) + beside + weak;
    }

    /** Returns what a light is called. */
    static String light(Light light) {
        if (light.form() == LightForm.OFF) {
            return Messages.get("pilot.light.none");
        }
        String colour = Messages.get("pilot.light." + light.colour().key());
        return light.form() == LightForm.STEADY ? colour : Messages.get("pilot.light." + light.form().key(), colour);
    }

    private Optional<String> beside() {
        double widest = sight.seen().stream().mapToDouble(seenUnit -> seenUnit.unit().offAxisDeg(sight.eye())).reduce(0,
                (one, other) -> Math.abs(other) > Math.abs(one) ? other : one);
        boolean any = sight.seen().stream().anyMatch(sight::isBeside);
        return any ? Optional.of(Messages.get("pilot.words.beam", angle(Math.abs(widest)))) : Optional.empty();
    }

    private Optional<String> rhythm() {
        Optional<SeenUnit> timed = sight.seen().stream().filter(seenUnit -> sight.rhythm(seenUnit).isTimed()).findFirst();
        return timed.map(seen -> {
            LightRhythm rhythm = sight.rhythm(seen);
            String rate = MessageTexts.renderer().fixed(rhythm.rateHz(), 2);
            String source = rhythm.source().map(cited -> MessageTexts.of(cited.text()) + ", " + provenance(cited.provenance()))
                    .orElse(Messages.get("pilot.words.no-source"));
            boolean pulsates = seen.light().form() == LightForm.PULSATING;
            return Messages.get(pulsates ? "pilot.words.pulses" : "pilot.words.flashes", rate,
                    String.valueOf(Math.round(rhythm.onShare() * 100)), source) + (pulsates ? Messages.get("pilot.words.assumed") : "");
        });
    }

    private static String provenance(Provenance provenance) {
        return MessageTexts.of(new Argument.Term("provenance." + provenance.key()));
    }

    private List<String> range() {
        if (Families.get(sight.indicator().siting().family()).displayForm() == IndicatorFamily.DisplayForm.PANELS) {
            return List.of(Messages.get("pilot.words.panels"));
        }
        Optional<RangeEstimate> range = sight.indicator().range();
        if (range.isEmpty() || range.get().rangeM(sight.condition()).isEmpty()) {
            return List.of(Messages.get("pilot.words.no-intensity"));
        }
        RangeEstimate found = range.get();
        List<String> lines = new ArrayList<>();
        double seen = found.rangeM(sight.condition()).orElseThrow();
        long intensity = Math.round(found.intensityCd(sight.condition()).orElseThrow());
        lines.add(Messages.get("pilot.words.range", length(Math.rint(seen)), Messages.get("pilot.daylight." + sight.daylight().name()
                .toLowerCase(Locale.ROOT)), length(found.visibilityM()), String.valueOf(intensity), provenance(found.provenance())));
        found.separation()
                .ifPresent(separation -> lines.add(Messages.get("pilot.words.apart", length(Math.rint(separation.clearRangeM())))));
        return lines;
    }
}
