package slopewright.evaluation.portable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.Transition;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * The lines over which nothing may stand before a portable unit: the lower edge of the red sector, and the published margin below the
 * lowest on-slope signal. The stricter governs.
 *
 * @param lines     the lines that could be drawn
 * @param governing the stricter one; empty where none could be drawn
 * @param sector    the sector that was searched
 * @param complete  whether both lines could be drawn
 * @param notes     what a reader must know
 */
public record SightLines(List<SightLine> lines, Optional<SightLine> governing, SightLine.Sector sector, boolean complete,
        List<String> notes) {

    /** Name of the line along the red sector. */
    public static final String RED_EDGE = "lower edge of the red sector";
    /** Name of the line of the published margin. */
    public static final String MARGIN = "published margin below the lowest on-slope signal";

    /** Copies the lists. */
    public SightLines {
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }

    /** Returns whether both lines could be drawn and no obstacle stands through either. */
    public boolean isClear() {
        return complete && lines.stream().allMatch(SightLine::isClear);
    }

    /**
     * Draws the lines of a unit.
     *
     * @param evaluation the evaluation of the aid
     * @return the lines
     * @throws slopewright.siting.SitingException where there is no layout or no frame, or an obstacle lacks a number
     */
    public static SightLines of(AidEvaluation evaluation) {
        ApproachAid aid = evaluation.aid();
        Siting siting = evaluation.layout().orThrow();
        RuleSet rules = evaluation.rules();
        SiteFrame frame = evaluation.frame().orThrow();
        Project project = evaluation.project();
        List<Obstacle> obstacles = project.getAerodrome() == null ? List.of() : project.getAerodrome().getObstacles();
        List<String> notes = new ArrayList<>();
        UnitPlan unit = lowest(siting);
        FramePoint lens = unit.place();
        double half = Math.max(common(rules, "obstacle.signal-sector-deg").value(), beamDeg(aid));
        SightLine.Sector sector = new SightLine.Sector(lens, unit.azimuthDeg(), half, common(rules, "obstacle.signal-range-m").value());
        List<SightLine> lines = new ArrayList<>();
        redLowerEdgeDeg(aid, unit).ifPresentOrElse(edge -> lines.add(SightLine.of(RED_EDGE, edge, true, sector, obstacles, frame,
                List.of())),
                () -> notes.add("The lower edge of the red sector is not known: enter it at the equipment as a sector edge with no light"
                        + " below and red above."));
        Margin margin = margin(siting, rules);
        lines.add(SightLine.of(MARGIN, margin.angleDeg(), false, sector, obstacles, frame, margin.citations()));
        Optional<SightLine> governing = lines.stream().min(Comparator.<SightLine>comparingDouble(line -> line.marginM()
                .orElse(Double.POSITIVE_INFINITY)).thenComparingDouble(SightLine::angleDeg));
        notes.add(String.format(Locale.ROOT, "Searched: %.1f° to each side of the axis out to %.0f m.", half, sector.rangeM()));
        return new SightLines(lines, governing, sector, lines.size() == 2, notes);
    }

    private static UnitPlan lowest(Siting siting) {
        return siting.units().stream().min(Comparator.comparingDouble(UnitPlan::settingDeg)).orElseThrow();
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
        CitedValue below = common(rules, "obstacle.signal-margin-deg");
        return new Margin(siting.lowestOnSlopeDeg() - below.value(), List.of(below.citation()));
    }

    /** Returns a value of the rule set, or of the one that publishes it where this one is silent. */
    static CitedValue common(RuleSet rules, String key) {
        return rules.find(key).orElseGet(() -> RuleSets.find("faa").orElseThrow().value(key));
    }

    /** Returns where the red begins over the dark, decimal degrees; empty where neither the equipment nor the unit says. */
    static OptionalDouble redLowerEdgeDeg(ApproachAid aid, UnitPlan unit) {
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
