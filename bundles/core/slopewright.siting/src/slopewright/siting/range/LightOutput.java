package slopewright.siting.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Colour;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Light;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.Citation;
import slopewright.standards.CitedText;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.Source;

/**
 * How strong the units of an indicator shine in a direction. A rule set prints contours of least intensity around the axis of a unit, which
 * is its azimuth and its setting: that of the smallest contour around the direction counts, nothing is interpolated, and outside the last
 * one nothing is known. An intensity that was entered is that on the axis: it holds inside the innermost contour; farther out the contours
 * hold for a unit that reaches the innermost one. Where the rule set has no contours it holds within the entered width of the beam.
 */
public final class LightOutput {
    private static final double FULL_PERCENT = 100;

    private final IndicatorFamily family;
    private final RuleSet rules;
    private final RangeConditions conditions;

    private LightOutput(IndicatorFamily family, RuleSet rules, RangeConditions conditions) {
        this.family = family;
        this.rules = rules;
        this.conditions = conditions;
    }

    /**
     * What is known of the light in one direction.
     *
     * @param intensityCd candela; empty where nothing is known
     * @param reason      why nothing is known; empty where something is
     * @param uses        where the numbers come from
     */
    public record Output(OptionalDouble intensityCd, Optional<Message> reason, List<Siting.CitedUse> uses) {
        /** Copies the list. */
        public Output {
            uses = List.copyOf(uses);
        }

        static Output unknown(Message reason) {
            return new Output(OptionalDouble.empty(), Optional.of(reason), List.of());
        }

        static Output of(double candela, List<Siting.CitedUse> uses) {
            return new Output(OptionalDouble.of(candela), Optional.empty(), uses);
        }
    }

    /**
     * Starts from what is known.
     *
     * @param family     the family
     * @param rules      the rule set with its contours
     * @param conditions what is known of the equipment
     */
    public static LightOutput of(IndicatorFamily family, RuleSet rules, RangeConditions conditions) {
        return new LightOutput(family, rules, conditions);
    }

    /**
     * Returns what is known of a unit's light toward an eye.
     *
     * @param unit      the unit
     * @param eye       the eye in the same frame
     * @param condition by day, at twilight or at night; twilight counts as night where the printed intensities differ
     * @return the intensity, or why it is not known
     */
    public Output toward(UnitPlan unit, FramePoint eye, LightCondition condition) {
        double elevation = unit.elevationDeg(eye);
        Light light = unit.lightAt(elevation);
        if (light.colour() == Colour.NONE) {
            return Output.unknown(Message.of("range-estimate.dark", Words.name(unit.id())));
        }
        double azimuth = unit.offAxisDeg(eye);
        double above = elevation - unit.settingDeg();
        double share = condition == LightCondition.NIGHT ? conditions.nightPercent().orElse(FULL_PERCENT) / FULL_PERCENT : 1;
        Optional<PrintedLight> printed = PrintedLight.of(family, rules, light.colour(), condition, isWhiteKnown())
                .map(table -> table.dimmed(share));
        OptionalDouble entered = entered(light.colour(), share);
        Message outside = Message.of("range-estimate.outside", Words.name(unit.id()), Words.degrees(Math.abs(azimuth)),
                Words.degrees(Math.abs(above)));
        if (printed.isEmpty()) {
            return entered.isEmpty() ? Output.unknown(Message.of("range-estimate.no-intensity", Families.name(family)))
                    : withinBeam(entered.getAsDouble(), azimuth, outside);
        }
        OptionalDouble contour = printed.get().intensityCd(azimuth, above);
        if (contour.isEmpty()) {
            return Output.unknown(outside);
        }
        if (entered.isEmpty()) {
            return Output.of(contour.getAsDouble(), printed.get().uses());
        }
        if (contour.getAsDouble() == printed.get().onAxisCd()) {
            return Output.of(entered.getAsDouble(), List.of(ofProject(entered.getAsDouble())));
        }
        if (entered.getAsDouble() < printed.get().onAxisCd()) {
            return Output.unknown(Message.of("range-estimate.weaker", Words.name(unit.id())));
        }
        List<Siting.CitedUse> uses = new ArrayList<>(printed.get().uses());
        uses.add(ofProject(entered.getAsDouble()));
        return Output.of(contour.getAsDouble(), uses);
    }

    /**
     * Returns what is known of the weakest unit that shines toward an eye on the slope over the extended centre line.
     *
     * @param siting    the layout
     * @param distanceM distance of the eye from the reference point, metres
     * @param condition by day, at twilight or at night
     * @return the least intensity, or why that of a unit is not known
     */
    public Output weakestOnSlope(Siting siting, double distanceM, LightCondition condition) {
        FramePoint reference = siting.reference();
        FramePoint eye = new FramePoint(reference.alongM() - distanceM, 0,
                reference.heightM() + distanceM * Angles.tanDeg(siting.slopeDeg()));
        Output weakest = null;
        for (UnitPlan unit : siting.units()) {
            if (unit.lightAt(unit.elevationDeg(eye)).colour() == Colour.NONE) {
                continue;
            }
            Output output = toward(unit, eye, condition);
            if (output.intensityCd().isEmpty()) {
                return output;
            }
            if (weakest == null || output.intensityCd().getAsDouble() < weakest.intensityCd().getAsDouble()) {
                weakest = output;
            }
        }
        return weakest == null ? Output.unknown(Message.of("range-estimate.no-intensity", Families.name(family))) : weakest;
    }

    private Output withinBeam(double entered, double azimuthDeg, Message outside) {
        if (conditions.beamWidthDeg().isEmpty()) {
            return Output.unknown(Message.of("range-estimate.no-beam-width", Families.name(family)));
        }
        return Math.abs(azimuthDeg) <= conditions.beamWidthDeg().getAsDouble() / 2 ? Output.of(entered, List.of(ofProject(entered)))
                : Output.unknown(outside);
    }

    private OptionalDouble entered(Colour colour, double share) {
        OptionalDouble full = colour == Colour.WHITE && conditions.whiteIntensityCd().isPresent() ? conditions.whiteIntensityCd()
                : conditions.intensityCd();
        return full.isPresent() ? OptionalDouble.of(full.getAsDouble() * share) : full;
    }

    /** Returns whether white counts by itself: where only one number was entered it is that of the red. */
    private boolean isWhiteKnown() {
        return conditions.whiteIntensityCd().isPresent() || conditions.intensityCd().isEmpty();
    }

    private static Siting.CitedUse ofProject(double candela) {
        return new Siting.CitedUse("intensity-cd", candela, "cd", new Citation("intensity-cd",
                new Source("project", CitedText.of("@equipment-entered"), CitedText.of("")), CitedText.of(""), Provenance.OVERRIDE,
                CitedText.of(""), ""));
    }
}
