package slopewright.evaluation.portable;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import slopewright.evaluation.AidEvaluation;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.descent.DescentSlope;
import slopewright.siting.descent.DescentTable;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;

/**
 * Everything that a person needs who sets a portable unit up, with where each number comes from.
 *
 * @param label     the aid, for people
 * @param date      the day of the set-up
 * @param siting    the layout: as it stands in the project, or solved where the aid has no units yet
 * @param solved    whether the layout was solved
 * @param descent   the slope that follows from speed and rate of descent; empty where they were not entered
 * @param azimuth   where the unit is turned to
 * @param sight     the lines over which nothing may stand
 * @param levelling what a tilted unit does to the path
 * @param battery   endurance of the battery; empty where no battery was entered
 * @param sectors   where the edges of the sectors come from
 * @param blockers  why no card and no PASS may be given yet; empty where nothing stands against it
 * @param notes     what a reader must know
 * @param citations where every number that was used comes from
 */
public record PortableSetUp(String label, LocalDate date, Siting siting, boolean solved, Optional<DescentSlope> descent, Azimuth azimuth,
        SightLines sight, LevellingEffect levelling, Optional<BatteryEndurance> battery, SectorSource sectors, List<String> blockers,
        List<String> notes, List<Citation> citations) {

    /** Where the edges of a unit's sectors come from. */
    public enum SectorSource {
        /** Entered for the equipment in hand. */
        ENTERED,
        /** Published, or confirmed by a person. */
        CONFIRMED,
        /** From memory and confirmed by nobody. */
        UNCONFIRMED
    }

    /** A set slope that differs by more than this from the one that follows from the descent is remarked on. */
    private static final double REMARKABLE_DEG = 0.05;
    /** Words of the note that a layout bears where its sectors are from memory. */
    private static final String SECTOR_NOTE = "enter or confirm the sectors of the unit in hand";
    private static final List<String> SECTOR_WORDS = List.of("sector", "outer-offset", "inner-offset", "on-slope-half", "dark-amber");

    /** Copies the lists. */
    public PortableSetUp {
        Objects.requireNonNull(siting);
        Objects.requireNonNull(sectors);
        blockers = List.copyOf(blockers);
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }

    /** Returns whether a card may be printed as ready for use. */
    public boolean isReady() {
        return blockers.isEmpty();
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
        ApproachHost host = evaluation.host();
        RuleSet rules = evaluation.rules();
        List<String> notes = new ArrayList<>();
        Optional<DescentSlope> descent = DescentSlope.of(aid);
        boolean solved = !evaluation.isLaidOut();
        Siting siting = evaluation.layout().orThrow();
        descent.ifPresent(found -> noteDescent(found, siting, notes));
        SiteFrame frame = evaluation.frame().orThrow();
        Azimuth azimuth = Azimuth.of(frame.bearingDeg(), siting.units().get(0).azimuthDeg(), SiteVariation.of(host, date));
        SightLines sight = SightLines.of(evaluation);
        LevellingEffect levelling = LevellingErrors.levelling(aid, siting, rules, notes);
        Optional<BatteryEndurance> battery = circuitBattery(evaluation.project(), aid, rules);
        SectorSource sectors = sectors(aid, siting);
        if (!Boolean.TRUE.equals(aid.getPortable())) {
            notes.add("The aid is not marked as portable.");
        }
        if (solved) {
            notes.add("The aid has no units yet; the layout was solved.");
        }
        boolean entered = sectors == SectorSource.ENTERED;
        siting.notes().stream().map(note -> note.english()).filter(note -> !entered || !note.contains(SECTOR_NOTE)).forEach(notes::add);
        notes.addAll(sight.notes());
        notes.addAll(azimuth.variation().notes());
        battery.ifPresent(found -> notes.addAll(found.notes()));
        return new PortableSetUp(Projects.path(aid), date, siting, solved, descent, azimuth, sight, levelling, battery, sectors,
                blockers(sectors, sight, LevellingErrors.sectorsDiffer(aid, siting)), notes, citations(siting, entered, azimuth, sight, battery,
                        descent));
    }

    private static void noteDescent(DescentSlope descent, Siting siting, List<String> notes) {
        notes.addAll(descent.notes());
        double gap = siting.slopeDeg() - descent.slopeDeg();
        if (Math.abs(gap) > REMARKABLE_DEG) {
            notes.add(String.format(Locale.ROOT, "The unit is set to %.2f°, which differs by %+.2f° from the slope of the descent (%s).",
                    siting.slopeDeg(), gap, descent.text()));
        }
    }

    private static Optional<BatteryEndurance> circuitBattery(Project project, ApproachAid aid, RuleSet rules) {
        Aerodrome aerodrome = project.getAerodrome();
        return aerodrome == null ? Optional.empty()
                : aerodrome.getCircuits().stream().filter(circuit -> circuit.getAids().contains(aid) && circuit.getCapacityAh() != null)
                        .findFirst().map(circuit -> BatteryCircuits.endurance(circuit, aid.getEquipment(), rules));
    }

    private static SectorSource sectors(ApproachAid aid, Siting siting) {
        if (aid.getEquipment() != null && !aid.getEquipment().getSectors().isEmpty()) {
            return SectorSource.ENTERED;
        }
        boolean open = siting.citations().stream().anyMatch(use -> isSector(siting, use) && use.citation().toConfirm());
        return open ? SectorSource.UNCONFIRMED : SectorSource.CONFIRMED;
    }

    private static boolean isSector(Siting siting, Siting.CitedUse use) {
        return use.name().startsWith(siting.family() + ".") && SECTOR_WORDS.stream().anyMatch(use.name()::contains);
    }

    private static List<String> blockers(SectorSource sectors, SightLines sight, boolean differ) {
        List<String> blockers = new ArrayList<>();
        if (differ) {
            blockers.add("The sectors of the unit in the layout are not those that were entered for its equipment.");
        }
        if (sectors == SectorSource.UNCONFIRMED) {
            blockers.add("The edges of the sectors are from memory: enter those of the unit in hand at its equipment, or confirm them.");
        }
        if (!sight.complete()) {
            blockers.add("The sight line along the lower edge of the red sector could not be drawn.");
        }
        sight.lines().stream().filter(line -> !line.isClear()).forEach(line -> blockers.add(String.format(Locale.ROOT,
                "%s stands %.2f m through the %s.", line.obstacle(), -line.marginM().getAsDouble(), line.name())));
        return blockers;
    }

    /** Sectors that were entered do not rest on those that the rule set remembers. */
    private static List<Citation> citations(Siting siting, boolean entered, Azimuth azimuth, SightLines sight,
            Optional<BatteryEndurance> battery, Optional<DescentSlope> descent) {
        Set<Citation> all = new LinkedHashSet<>();
        siting.citations().stream().filter(use -> !entered || !isSector(siting, use)).forEach(use -> all.add(use.citation()));
        all.add(azimuth.variation().citation());
        sight.lines().forEach(line -> all.addAll(line.citations()));
        battery.ifPresent(found -> all.addAll(found.citations()));
        descent.flatMap(DescentSlope::table).ifPresent(entry -> all.add(DescentTable.bundled().citation()));
        return List.copyOf(all);
    }

    /** Returns the citations that still need a person's confirmation. */
    public List<Citation> toConfirm() {
        return citations.stream().filter(Citation::toConfirm).toList();
    }
}
