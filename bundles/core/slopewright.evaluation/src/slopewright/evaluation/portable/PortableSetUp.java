package slopewright.evaluation.portable;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;
import slopewright.siting.descent.DescentSlope;
import slopewright.siting.descent.DescentTable;
import slopewright.siting.magnetic.Declination;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.standards.Citation;

/**
 * Everything that a person needs who sets a portable unit up, with where each number comes from.
 *
 * @param label     the aid, for people
 * @param date      the day of the set-up
 * @param siting    the layout: as it stands in the project, or solved where the aid has no units yet
 * @param solved    whether the layout was solved
 * @param descent   the slope that follows from speed and rate of descent; empty where they were not entered
 * @param azimuth   where the first unit is turned to
 * @param hands     what the hand does to each unit
 * @param sight     the lines over which nothing may stand
 * @param levelling what a tilted unit does to the path
 * @param battery   endurance of the battery; empty where no battery was entered
 * @param sectors   where the edges of the sectors come from
 * @param blockers  what of the set-up itself stands against its use; rules may say more
 * @param notes     what a reader must know
 * @param citations where every number that was used comes from
 */
public record PortableSetUp(Argument label, LocalDate date, Siting siting, boolean solved, Optional<DescentSlope> descent, Azimuth azimuth,
        List<HandUnit> hands, SightLines sight, LevellingEffect levelling, Optional<BatteryEndurance> battery, SectorSource sectors,
        List<Message> blockers, List<Message> notes, List<Citation> citations) {

    /** Where the edges of a unit's sectors come from. */
    public enum SectorSource {
        /** Entered for the equipment in hand. */
        ENTERED,
        /** Published, or confirmed by a person. */
        CONFIRMED,
        /** From memory and confirmed by nobody. */
        UNCONFIRMED
    }

    /** An entered magnetic variation that differs by more than this from the model makes no card. */
    private static final double VARIATION_LIMIT_DEG = 0.5;
    private static final double USUAL_EDGE_DEG = 8;
    /** A millionth of a degree, the resolution at which angles are kept. */
    static final double RESOLUTION_MIN = 60e-6;

    /** Copies the lists. */
    public PortableSetUp {
        Objects.requireNonNull(siting);
        Objects.requireNonNull(sectors);
        hands = List.copyOf(hands);
        blockers = List.copyOf(blockers);
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }

    /**
     * Works the set-up of an aid out.
     *
     * @param evaluation the evaluation of the aid
     * @param date       the day of the set-up
     * @return the set-up
     * @throws slopewright.siting.SitingException where something is missing or does not fit; the message says what
     */
    public static PortableSetUp of(AidEvaluation evaluation, LocalDate date) {
        ApproachAid aid = evaluation.aid();
        Optional<DescentSlope> descent = DescentSlope.of(aid);
        Siting siting = evaluation.layout().orThrow();
        SiteVariation variation = SiteVariation.of(evaluation.host(), date);
        double bearing = evaluation.frame().orThrow().bearingDeg();
        Azimuth azimuth = Azimuth.of(bearing, siting.units().get(0).azimuthDeg(), variation);
        List<HandUnit> hands = HandUnit.of(siting, bearing, variation, aid.getEquipment());
        SightLines sight = SightLines.of(evaluation);
        LevellingEffect levelling = LevellingEffect.of(siting.slopeDeg(), sight.allowance().minutes(), edgeAzimuthDeg(aid));
        Attempt<Optional<BatteryEndurance>> battery = Attempt.of(() -> circuitBattery(evaluation));
        SectorSource sectors = sectors(aid, siting);
        List<Message> notes = new ArrayList<>();
        descent.ifPresent(found -> notes.addAll(found.notes()));
        notes.add(Message.of("portable.tilt", Words.min(levelling.minutes()), sight.allowance().message()));
        if (!evaluation.isLaidOut()) {
            notes.add(Message.of("portable.solved"));
        }
        notes.addAll(siting.notes());
        notes.addAll(sight.notes());
        notes.addAll(azimuth.variation().notes());
        battery.value().flatMap(found -> found).ifPresent(found -> notes.addAll(found.notes()));
        battery.reason().ifPresent(reason -> notes.add(Message.of("portable.battery-unknown", reason)));
        List<Message> blockers = new ArrayList<>(blockers(sectors, sight, EnteredSectors.differ(aid, siting)));
        if (!Boolean.TRUE.equals(aid.getPortable())) {
            blockers.add(Message.of("portable.not-portable"));
        }
        hands.forEach(hand -> betweenMarks(hand, sight.allowance()).ifPresent(blockers::add));
        offModel(evaluation, azimuth.variation(), date).ifPresent(blockers::add);
        Optional<BatteryEndurance> endurance = battery.value().flatMap(found -> found);
        return new PortableSetUp(ElementNames.way(aid), date, siting, !evaluation.isLaidOut(), descent, azimuth, hands, sight, levelling,
                endurance, sectors, blockers, notes,
                citations(siting, sectors == SectorSource.ENTERED, azimuth, sight, endurance, descent));
    }

    private static double edgeAzimuthDeg(ApproachAid aid) {
        double left = aid.getBeamLeftLimitDeg() == null ? USUAL_EDGE_DEG : Math.abs(aid.getBeamLeftLimitDeg());
        double right = aid.getBeamRightLimitDeg() == null ? USUAL_EDGE_DEG : Math.abs(aid.getBeamRightLimitDeg());
        return Math.max(left, right);
    }

    /** A mark that is farther from the setting than the setting may be off is another setting. */
    private static Optional<Message> betweenMarks(HandUnit hand, SettingAllowance allowance) {
        return hand.slope().filter(allowance::isOtherSetting)
                .map(mark -> Message.of("portable.between-marks", Words.name(hand.unit().id()), Words.deg(mark.settingDeg()),
                        Words.degrees(mark.markDeg()), Words.min(Math.abs(mark.offMin())), Words.min(allowance.accuracy().value())));
    }

    private static Optional<Message> offModel(AidEvaluation evaluation, SiteVariation variation, LocalDate date) {
        return SiteVariation.modelled(evaluation.host(), date).map(Declination::declinationDeg)
                .filter(model -> Math.abs(model - variation.variationDeg()) > VARIATION_LIMIT_DEG)
                .map(model -> Message.of("portable.off-model", Words.degrees(variation.variationDeg()), Words.degrees(model),
                        Words.degrees(VARIATION_LIMIT_DEG)));
    }

    private static Optional<BatteryEndurance> circuitBattery(AidEvaluation evaluation) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        ApproachAid aid = evaluation.aid();
        return aerodrome == null ? Optional.empty()
                : aerodrome.getCircuits().stream().filter(circuit -> circuit.getAids().contains(aid) && circuit.getCapacityAh() != null)
                        .findFirst().map(circuit -> BatteryCircuits.endurance(circuit, aid.getEquipment(), evaluation.rules()));
    }

    private static SectorSource sectors(ApproachAid aid, Siting siting) {
        if (aid.getEquipment() != null && !aid.getEquipment().getSectors().isEmpty()) {
            return SectorSource.ENTERED;
        }
        boolean open = siting.citations().stream().anyMatch(use -> use.isSector() && use.citation().toConfirm());
        return open ? SectorSource.UNCONFIRMED : SectorSource.CONFIRMED;
    }

    private static List<Message> blockers(SectorSource sectors, SightLines sight, boolean differ) {
        List<Message> blockers = new ArrayList<>();
        if (differ) {
            blockers.add(Message.of("portable.sectors-differ"));
        }
        if (sectors == SectorSource.UNCONFIRMED) {
            blockers.add(Message.of("portable.sectors-unconfirmed"));
        }
        if (!sight.complete()) {
            blockers.add(Message.of("portable.no-red-edge"));
        }
        if (sight.isUnsurveyed()) {
            blockers.add(Message.of("portable.no-survey"));
        } else if (!sight.uncompared().isEmpty()) {
            blockers.add(Message.of("portable.uncompared", Words.list(sight.uncompared().stream().map(Uncompared::reason).toList())));
        } else if (!sight.surveyed()) {
            blockers.add(Message.of("portable.short-survey", Words.degrees(sight.halfDeg()), Words.wholeM(sight.rangeM())));
        }
        for (SightLine line : sight.lines()) {
            if (line.isBelowHorizon()) {
                blockers.add(Message.of("portable.below-horizon", line.kind().message(), Words.deg(line.angleDeg()),
                        Words.min(sight.allowance().minutes())));
            }
            if (line.isBlocked()) {
                boolean asSet = line.marginM().getAsDouble() < 0;
                blockers.add(Message.of(asSet ? "portable.through" : "portable.through-when-off", Words.name(line.obstacle()),
                        Words.margin(-(asSet ? line.marginM() : line.lowestMarginM()).getAsDouble()), line.kind().message(),
                        Words.min(sight.allowance().minutes())));
            }
        }
        return blockers;
    }

    /** Sectors that were entered do not rest on those that the rule set remembers. */
    private static List<Citation> citations(Siting siting, boolean entered, Azimuth azimuth, SightLines sight,
            Optional<BatteryEndurance> battery, Optional<DescentSlope> descent) {
        Set<Citation> all = new LinkedHashSet<>();
        siting.citations().stream().filter(use -> !entered || !use.isSector()).forEach(use -> all.add(use.citation()));
        all.add(azimuth.variation().citation());
        all.addAll(sight.allowance().citations());
        sight.lines().forEach(line -> all.addAll(line.citations()));
        battery.ifPresent(found -> all.addAll(found.citations()));
        descent.flatMap(DescentSlope::table).ifPresent(entry -> all.add(DescentTable.bundled().citation()));
        return List.copyOf(all);
    }

    /** Returns the citations that still need a person's confirmation. */
    public List<Citation> toConfirm() {
        return citations.stream().filter(Citation::toConfirm).toList();
    }

    /** Returns those of them on which a figure of the set-up rests: all but the printed table of descents, which is only held beside it. */
    public List<Citation> restingToConfirm() {
        return toConfirm().stream().filter(citation -> !citation.equals(DescentTable.bundled().citation())).toList();
    }
}
