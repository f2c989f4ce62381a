package slopewright.evaluation.portable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyReach;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.Transition;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/**
 * The lines over which nothing may stand before an indicator: the lower edge of the red sector, and the published margin below the lowest
 * on-slope signal, from the lens of each unit. The stricter governs, with the unit off by its whole allowance for setting and tilt.
 *
 * @param lines     of each kind that could be drawn the strictest one of all units
 * @param governing the strictest of all; empty where none could be drawn
 * @param halfDeg   half the width of the sector that was searched, decimal degrees
 * @param rangeM    how far it was searched, metres
 * @param allowance by how much a unit may be off
 * @param complete  whether both lines could be drawn for every unit
 * @param surveyed  whether an obstacle survey of the place reaches over all that was searched: only that says that nothing else stands
 *                  there
 * @param notes     what a reader must know
 */
public record SightLines(List<SightLine> lines, Optional<SightLine> governing, double halfDeg, double rangeM, SettingAllowance allowance,
        boolean complete, boolean surveyed, List<Message> notes) {
    private static final String RANGE = "obstacle.signal-range-m";
    /** What points into the ground is never clear, whatever stands there; then what clears by less, then what is flatter. */
    private static final Comparator<SightLine> STRICTEST = Comparator.comparing((SightLine line) -> !line.isBelowHorizon())
            .thenComparingDouble(line -> line.lowestMarginM().orElse(Double.POSITIVE_INFINITY)).thenComparingDouble(SightLine::angleDeg);

    /** Copies the lists. */
    public SightLines {
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }

    /** Returns whether both lines could be drawn for every unit, a survey says what stands before them, and each is clear. */
    public boolean isClear() {
        return complete && surveyed && lines.stream().allMatch(SightLine::isClear);
    }

    /** Returns the strictest line of a kind; empty where none could be drawn. */
    public Optional<SightLine> line(SightLine.Kind kind) {
        return lines.stream().filter(line -> line.kind() == kind).findFirst();
    }

    /** Returns what is entered but could not be compared; while there is any, no line is clear. */
    public List<Uncompared> uncompared() {
        return lines.stream().findFirst().map(line -> line.lowest().uncompared()).orElse(List.of());
    }

    /** Returns whether nothing was surveyed at all, so that nobody knows what stands there. */
    public boolean isUnsurveyed() {
        return lines.stream().anyMatch(line -> line.lowest().isUnsurveyed() && line.lowest().uncompared().isEmpty());
    }

    /**
     * Draws the lines of an aid as its units stand, or as they would be laid out where it has none.
     *
     * @param evaluation the evaluation of the aid
     * @return the lines
     * @throws SitingException where there is no layout or no frame; the message says why
     */
    public static SightLines of(AidEvaluation evaluation) {
        Siting siting = evaluation.layout().orThrow();
        Surroundings surroundings = evaluation.surroundings().orThrow();
        SettingAllowance allowance = SettingAllowance.of(evaluation, siting);
        double half = halfDeg(evaluation, allowance);
        double range = ProjectRules.common(evaluation.rules(), RANGE).value();
        List<SightLine> all = draw(evaluation, siting).stream().map(drawn -> drawn.compare(surroundings)).toList();
        List<SightLine> red = all.stream().filter(line -> line.kind() == SightLine.Kind.RED_EDGE).toList();
        List<SightLine> margins = all.stream().filter(line -> line.kind() == SightLine.Kind.MARGIN).toList();
        List<Message> notes = new ArrayList<>();
        boolean complete = red.size() == siting.units().size();
        if (!complete) {
            notes.add(Message.of("sight.no-red-edge"));
        }
        notes.add(Message.of("sight.searched", Words.degrees(half), Words.wholeM(range)));
        List<SightLine> lines = new ArrayList<>();
        red.stream().min(STRICTEST).ifPresent(lines::add);
        margins.stream().min(STRICTEST).ifPresent(lines::add);
        boolean surveyed = all.stream().allMatch(line -> SurveyReach.covers(evaluation.project().getAerodrome(), evaluation.host(),
                line.lowest().surface()));
        return new SightLines(lines, lines.stream().min(STRICTEST), half, range, allowance, complete, surveyed, notes);
    }

    /**
     * Draws the lines of a layout of an aid, compared with nothing yet.
     *
     * @param evaluation the evaluation of the aid
     * @param siting     a layout of it, as it stands or as it is tried
     * @return two lines of each unit, or only its margin where nobody says where its red begins
     */
    public static List<SightLine.Drawn> draw(AidEvaluation evaluation, Siting siting) {
        RuleSet rules = evaluation.rules();
        SettingAllowance allowance = SettingAllowance.of(evaluation, siting);
        double allowanceDeg = Angles.minutesToDeg(allowance.minutes());
        double half = halfDeg(evaluation, allowance);
        double range = ProjectRules.common(rules, RANGE).value();
        Margin margin = margin(siting, rules);
        List<SightLine.Drawn> drawn = new ArrayList<>();
        for (UnitPlan unit : siting.units()) {
            SightLine.Sector sector = new SightLine.Sector(unit.place(), unit.azimuthDeg(), half, range);
            redLowerEdgeDeg(evaluation.aid(), unit).ifPresent(angle -> drawn.add(new SightLine.Drawn(SightLine.Kind.RED_EDGE, unit.id(),
                    angle, angle - allowanceDeg, sector, List.of())));
            drawn.add(new SightLine.Drawn(SightLine.Kind.MARGIN, unit.id(), margin.angleDeg(), margin.angleDeg() - allowanceDeg, sector,
                    margin.citations()));
        }
        return drawn;
    }

    private static double halfDeg(AidEvaluation evaluation, SettingAllowance allowance) {
        return Math.max(ProjectRules.common(evaluation.rules(), "obstacle.signal-sector-deg").value(), beamDeg(evaluation.aid()))
                + allowance.turnDeg();
    }

    private static double beamDeg(ApproachAid aid) {
        double left = aid.getBeamLeftLimitDeg() == null ? 0 : Math.abs(aid.getBeamLeftLimitDeg());
        double right = aid.getBeamRightLimitDeg() == null ? 0 : Math.abs(aid.getBeamRightLimitDeg());
        return Math.max(left, right);
    }

    private record Margin(double angleDeg, List<Citation> citations) {
    }

    /** The slope of the layout's surface where its rule set gives one, else the common margin below the lowest on-slope signal. */
    private static Margin margin(Siting siting, RuleSet rules) {
        if (siting.surface().isPresent()) {
            return new Margin(siting.surface().get().slopeDeg(), siting.surface().get().citations());
        }
        CitedValue below = ProjectRules.common(rules, "obstacle.signal-margin-deg");
        return new Margin(siting.lowestOnSlopeDeg() - below.value(), List.of(below.citation()));
    }

    /**
     * Returns where the red begins over the dark.
     *
     * @param aid  the aid, for its equipment, whose sectors count first
     * @param unit one of its units
     * @return decimal degrees above the horizon; empty where neither the equipment nor the unit says
     */
    public static OptionalDouble redLowerEdgeDeg(ApproachAid aid, UnitPlan unit) {
        EquipmentType type = aid.getEquipment();
        if (type != null) {
            for (Transition sector : type.getSectors()) {
                boolean begins = sector.getBelowColour() == LightColour.NONE && sector.getAboveColour() == LightColour.RED;
                if (begins && sector.getOffsetDeg() != null) {
                    return OptionalDouble.of(unit.settingDeg() + sector.getOffsetDeg());
                }
            }
        }
        return unit.edges().stream().filter(edge -> edge.below().equals(Light.DARK) && edge.above().colour() == Colour.RED)
                .mapToDouble(SectorEdge::angleDeg).findFirst();
    }
}
