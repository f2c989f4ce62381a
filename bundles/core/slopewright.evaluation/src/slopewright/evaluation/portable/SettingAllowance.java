package slopewright.evaluation.portable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSets;

/**
 * By how much a unit may be off while it still shows its signals: the accuracy of setting, the greatest tilt that goes unnoticed, what the
 * nearest mark of its scale leaves, and what is left of the motion of a deck. The parts add up, for they may all fall on one side.
 *
 * @param accuracy  how exactly the angle is set
 * @param takenOver whether the accuracy is that of another family, because none is given for this one
 * @param others    what is added to it
 * @param turnDeg   by how much the axis may be turned away, decimal degrees: half a mark of the plate, and the swing of a deck
 */
public record SettingAllowance(CitedValue accuracy, boolean takenOver, List<Part> others, double turnDeg) {
    private static final String TAKEN_OVER = "heliport-sector.setting-accuracy-min";

    /**
     * A part of the allowance.
     *
     * @param minutes  how much it is, minutes of arc
     * @param message  what it is, for people
     * @param citation where it comes from; empty where it was entered
     */
    public record Part(double minutes, Message message, Optional<Citation> citation) {
    }

    /** Copies the list. */
    public SettingAllowance {
        others = List.copyOf(others);
    }

    /**
     * Reads the allowance of an aid as it stands, or as it would be laid out.
     *
     * @param evaluation the evaluation of the aid
     * @return the allowance
     */
    public static SettingAllowance of(AidEvaluation evaluation) {
        return of(evaluation, evaluation.layout().value());
    }

    /**
     * Reads the allowance of an aid in a layout of it: what the marks leave is that of the settings of this layout.
     *
     * @param evaluation the evaluation of the aid
     * @param layout     a layout of it, as it stands or as it is tried
     * @return the allowance
     */
    public static SettingAllowance of(AidEvaluation evaluation, Siting layout) {
        return of(evaluation, Optional.of(layout));
    }

    private static SettingAllowance of(AidEvaluation evaluation, Optional<Siting> layout) {
        String family = evaluation.family().map(IndicatorFamily::ruleKey).orElse("");
        EquipmentType type = evaluation.aid().getEquipment();
        Optional<CitedValue> own = evaluation.rules().find(family + ".setting-accuracy-min");
        List<Part> others = new ArrayList<>();
        tilt(evaluation.rules().find(family + ".tilt-switch-off-deg"), type).ifPresent(others::add);
        SlopeScale.of(type).ifPresent(scale -> layout.ifPresent(siting -> {
            double off = siting.units().stream().mapToDouble(unit -> Math.abs(scale.mark(unit.settingDeg()).offMin())).max().orElse(0);
            if (off > PortableSetUp.RESOLUTION_MIN) {
                others.add(new Part(off, Message.of("portable.off-mark", Words.min(off)), Optional.empty()));
            }
        }));
        Optional<DeckMotion> deck = DeckMotion.of(evaluation.host(), type);
        deck.ifPresent(found -> others.add(new Part(found.tiltMin(), Message.of(found.held() ? "portable.deck-held" : "portable.deck",
                Words.degrees(found.tiltMin() / 60)), Optional.empty())));
        double turn = AzimuthPlate.of(type).map(plate -> plate.stepDeg() / 2).orElse(0.0) + deck.map(DeckMotion::swingDeg).orElse(0.0);
        return new SettingAllowance(own.orElseGet(() -> RuleSets.find("icao").orElseThrow().value(TAKEN_OVER)), own.isEmpty(), others,
                turn);
    }

    /**
     * Returns the tilt that goes unnoticed: up to it a unit stays lit. Where that of the unit in hand is not known, it is the limit of the
     * rule set or the accuracy of the bubble, whichever is more.
     */
    private static Optional<Part> tilt(Optional<CitedValue> limit, EquipmentType type) {
        if (type != null && type.getTiltCutOffDeg() != null) {
            return Optional.of(new Part(Angles.degToMinutes(type.getTiltCutOffDeg()), Message.of("portable.tilt-cut-off", Words.degrees(type
                    .getTiltCutOffDeg())), Optional.empty()));
        }
        Stream<Part> cited = limit.stream().map(value -> new Part(Angles.degToMinutes(value.value()), Message.of("portable.tilt-limit",
                Words.degrees(value.value()), value.citation().text()), Optional.of(value.citation())));
        Stream<Part> bubble = type == null || type.getBubbleAccuracyMinutes() == null ? Stream.empty()
                : Stream.of(new Part(type.getBubbleAccuracyMinutes(), Message.of("portable.bubble", Words.min(type
                        .getBubbleAccuracyMinutes())), Optional.empty()));
        return Stream.concat(cited, bubble).max(Comparator.comparingDouble(Part::minutes));
    }

    /** Returns whether a mark is farther from the setting than the setting may be off, so that it is another setting. */
    public boolean isOtherSetting(SlopeScale.Mark mark) {
        return Math.abs(mark.offMin()) - PortableSetUp.RESOLUTION_MIN > accuracy.value();
    }

    /** Returns the whole allowance, minutes of arc. */
    public double minutes() {
        return accuracy.value() + others.stream().mapToDouble(Part::minutes).sum();
    }

    /** Returns where it comes from. */
    public List<Citation> citations() {
        return Stream.concat(Stream.of(accuracy.citation()), others.stream().flatMap(part -> part.citation().stream())).toList();
    }

    /** Returns what it is made of, in a sentence. */
    public Message message() {
        List<Argument> parts = new ArrayList<>();
        parts.add(Message.of(takenOver ? "portable.accuracy-taken-over" : "portable.accuracy", Words.min(accuracy.value()),
                accuracy.citation().text()));
        others.forEach(part -> parts.add(part.message()));
        return parts.size() == 1 ? (Message) parts.get(0) : Message.of("portable.allowance", Words.list(parts));
    }
}
