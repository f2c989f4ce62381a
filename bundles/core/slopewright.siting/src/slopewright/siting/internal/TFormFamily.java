package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.geometry.Angles;
import slopewright.geometry.Decimals;
import slopewright.geometry.FramePoint;
import slopewright.geometry.StoredResolution;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Colour;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.RuleSet;

/**
 * A wing bar of four units cut by a line of six: three fly-up units towards the threshold, three fly-down units beyond. Each unit is
 * moved along the runway for its own level difference, so that its plane passes where it would on level ground.
 */
abstract class TFormFamily implements IndicatorFamily {

    private static final int LEG_UNITS = 3;
    private static final int WING = 1;
    private static final int FLY_UP = 2;
    private static final int FLY_DOWN = 3;
    /** How near a solved eye height comes to the wanted one, metres. */
    private static final double SOLVED_M = 1e-9;
    private static final int MOST_STEPS = 60;
    private static final FramePoint ORIGIN = new FramePoint(0, 0, 0);

    private final String key;
    private final String name;
    private final boolean bothSides;

    TFormFamily(String key, String name, boolean bothSides) {
        this.key = key;
        this.name = name;
        this.bothSides = bothSides;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public Set<Trait> traits() {
        return bothSides ? Set.of(Trait.LEGS, Trait.CHOSEN_EYE_HEIGHT, Trait.MIRRORED) : Set.of(Trait.LEGS, Trait.CHOSEN_EYE_HEIGHT);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Integer> unitCounts() {
        return List.of(bothSides ? 20 : 10);
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        layout.unitCount();
        if (bothSides && request.side() == Side.RIGHT || !bothSides && request.side() == Side.BOTH) {
            throw new SitingException(Message.of(bothSides ? "siting.refused.t-form-one-side" : "siting.refused.t-form-both-sides",
                    Words.name(name)));
        }
        Plan plan = new Plan(layout, redLimitDeg(layout));
        Laid laid = lay(layout, plan);
        double nearest = nearestM(laid.parts().units());
        noteNominalHeight(layout, laid.nominalM());
        return layout.finish(laid.parts(), OptionalDouble.of(laid.nominalM()), new Surfaces.Anchor(plan.redDeg, nearest,
                UnshiftedDistance.of(nearest), laid.parts().place().lensM()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        double cutOff = LayoutBuilder.bar(units, FLY_UP).stream().mapToDouble(UnitPlan::settingDeg).max().orElseThrow();
        double red = LayoutBuilder.bar(units, WING).get(0).settingDeg();
        FramePoint bar = LayoutBuilder.centre(LayoutBuilder.bar(units, WING));
        return layout.laid(units, bar, red, OptionalDouble.of(layout.nominalHeightM(bar, cutOff)), unshifted);
    }

    /** A layout with its eye height on the slope itself. */
    private record Laid(LayoutBuilder.Laid parts, double nominalM) {
    }

    /** Lays the form out for the eye height on the slope that was entered, or so that the bars alone are seen from the aeroplane's. */
    private Laid lay(LayoutBuilder layout, Plan plan) {
        SitingRequest request = layout.request();
        if (request.has(Input.DISTANCE)) {
            LayoutBuilder.Place bar = layout.given();
            return laid(layout, plan, bar, layout.nominalHeightM(bar.lens(), layout.slopeDeg()));
        }
        if (request.has(Input.EYE_HEIGHT)) {
            return solved(layout, plan, EyeTarget.enteredM(request));
        }
        if (request.has(Input.EYE_TO_WHEEL)) {
            layout.keepClearance();
            return solvedLeast(layout, plan, EyeTarget.ofAeroplaneM(request, layout.reader()));
        }
        double nominal = layout.reader().metres(layout.prefix() + "nominal-eye-height");
        layout.reader().note(Message.of("siting.note.nominal-eye-height", Words.m(nominal)));
        return solved(layout, plan, nominal);
    }

    private Laid solved(LayoutBuilder layout, Plan plan, double nominalM) {
        return laid(layout, plan, layout.solve(nominalM, layout.slopeDeg(), 0), nominalM);
    }

    private Laid laid(LayoutBuilder layout, Plan plan, LayoutBuilder.Place bar, double nominalM) {
        List<UnitPlan> units = Sides.place(plan.units(bar, nominalM), bothSides ? Side.BOTH : layout.request().side());
        if (bar.distanceM() > 0 && nearestM(units) <= 0) {
            throw new SitingException(Message.of("siting.refused.fly-up-before-threshold", Words.m(-nearestM(units))));
        }
        return new Laid(layout.lay(bar, units), nominalM);
    }

    private static double nearestM(List<UnitPlan> units) {
        return units.stream().mapToDouble(unit -> unit.place().alongM()).min().orElseThrow();
    }

    /** The first fly-up unit, so much nearer to the approach, goes out that much lower; what is left is closed by steps. */
    private Laid solvedLeast(LayoutBuilder layout, Plan plan, double mehtM) {
        double nominal = mehtM + plan.firstOffsetM() * layout.riseAlong(layout.slopeDeg());
        Laid laid = solved(layout, plan, nominal);
        for (int step = 0; Math.abs(laid.parts().bound().heightM() - mehtM) > SOLVED_M; step++) {
            if (step == MOST_STEPS) {
                throw new SitingException(Message.of("siting.refused.no-least-height", Words.m(mehtM)));
            }
            nominal += mehtM - laid.parts().bound().heightM();
            laid = solved(layout, plan, nominal);
        }
        return laid;
    }

    private static void noteNominalHeight(LayoutBuilder layout, double heightM) {
        double from = layout.reader().metres(layout.prefix() + "eye-height-from");
        double to = layout.reader().metres(layout.prefix() + "eye-height-to");
        if (heightM < from - StoredResolution.LENGTH_M || heightM > to + StoredResolution.LENGTH_M) {
            layout.reader().note(Message.of("siting.note.eye-height-outside", Words.m(heightM), Words.wholeM(from), Words.wholeM(to)));
        }
    }

    private static double parsed(String redLimit) {
        try {
            return Decimals.parse(redLimit);
        } catch (IllegalArgumentException e) {
            throw new SitingException(Message.of("siting.refused.red-limit-number", Words.name(redLimit)));
        }
    }

    private static double redLimitDeg(LayoutBuilder layout) {
        double standard = layout.reader().degrees(layout.prefix() + "red-limit");
        double chosen = layout.request().option("red-limit-deg").map(TFormFamily::parsed).orElse(standard);
        double highest = layout.slopeDeg() - layout.reader().degrees(layout.prefix() + "fly-up-step") * (LEG_UNITS - 1);
        if (chosen < standard || chosen >= highest) {
            throw new SitingException(Message.of("siting.refused.red-limit", Words.degrees(standard), Words.degrees(highest),
                    Words.degrees(chosen)));
        }
        return chosen;
    }

    /** The dimensions of one side, read once, and the units that they give on the right of the centre line. */
    private static final class Plan {

        private final LayoutBuilder layout;
        private final double legM;
        private final double innerM;
        private final double outerM;
        private final double firstM;
        private final double spacingM;
        private final double redDeg;
        private final double upStepDeg;
        private final double downStepDeg;
        private final Edges edges;

        Plan(LayoutBuilder layout, double redDeg) {
            RuleReader reader = layout.reader();
            String prefix = layout.prefix();
            this.layout = layout;
            this.redDeg = redDeg;
            legM = layout.halfWidthM() + reader.metres(prefix + "leg-to-edge");
            innerM = reader.metres(prefix + "bar-inner-offset");
            outerM = reader.metres(prefix + "bar-outer-offset");
            firstM = reader.metres(prefix + "leg-first-offset");
            spacingM = reader.metres(prefix + "leg-spacing");
            upStepDeg = reader.degrees(prefix + "fly-up-step");
            downStepDeg = reader.degrees(prefix + "fly-down-step");
            edges = new Edges(redDeg, reader.degrees(prefix + "beam-top"), reader.minutes(prefix + "transition-width"));
        }

        /** Returns the distance from the bar to the first unit of a leg, metres. */
        double firstOffsetM() {
            return firstM;
        }

        List<UnitPlan> units(LayoutBuilder.Place bar, double nominalM) {
            List<UnitPlan> units = new ArrayList<>();
            double[] across = {legM - outerM, legM - innerM, legM + innerM, legM + outerM};
            for (int i = 0; i < across.length; i++) {
                units.add(new UnitPlan("W" + (i + 1), WING, new FramePoint(bar.distanceM(), across[i], bar.lensM()), redDeg, 0,
                        edges.wing()));
            }
            boolean given = layout.request().has(Input.DISTANCE);
            double levelBar = given ? bar.distanceM() : nominalM / layout.riseAlong(layout.slopeDeg());
            for (int n = 0; n < LEG_UNITS; n++) {
                double up = layout.slopeDeg() - n * upStepDeg;
                double down = layout.slopeDeg() + n * downStepDeg;
                double offset = firstM + n * spacingM;
                units.add(new UnitPlan("U" + (n + 1), FLY_UP, place(levelBar - offset, up, given), up, 0, edges.flyUp(up)));
                units.add(new UnitPlan("D" + (n + 1), FLY_DOWN, place(levelBar + offset, down, given), down, 0, edges.flyDown(down)));
            }
            return units;
        }

        /** Returns the place where a unit's cut-off plane passes as it would on level ground; a given layout is not moved. */
        private FramePoint place(double levelPlaceM, double cutOffDeg, boolean given) {
            double along = given ? levelPlaceM : layout.solve(levelPlaceM * layout.riseAlong(cutOffDeg), cutOffDeg, 0).distanceM();
            return new FramePoint(along, legM, layout.ground().lensAt(along));
        }
    }

    /** Makes the sector edges of the three kinds of unit. */
    private record Edges(double redDeg, double topDeg, double widthMin) {

        private SectorEdge redToWhite() {
            return new SectorEdge(redDeg, widthMin, Light.RED, Light.WHITE);
        }

        private SectorEdge whiteToDark(double angleDeg) {
            return new SectorEdge(angleDeg, 0, Light.WHITE, Light.DARK);
        }

        List<SectorEdge> wing() {
            return List.of(redToWhite(), whiteToDark(topDeg));
        }

        List<SectorEdge> flyUp(double cutOffDeg) {
            return List.of(redToWhite(), whiteToDark(cutOffDeg));
        }

        List<SectorEdge> flyDown(double cutOffDeg) {
            return List.of(new SectorEdge(cutOffDeg, 0, Light.DARK, Light.WHITE), whiteToDark(topDeg));
        }
    }

    /**
     * The bars are seen alone from where the last of them turns white and the last fly-up unit goes out, up to where a fly-down unit is lit
     * or a beam ends. Units that show something else than those of this form are searched edge by edge.
     */
    @Override
    public Optional<OnSlopeBound> lowestOnSlope(List<UnitPlan> units, double allowanceDeg) {
        if (allowanceDeg != 0 || !units.stream().allMatch(TFormFamily::showsItsPart)) {
            return IndicatorFamily.super.lowestOnSlope(units, allowanceDeg);
        }
        OnSlopeBound lowest = null;
        double highestM = Double.POSITIVE_INFINITY;
        boolean hasWing = false;
        for (UnitPlan unit : units) {
            SectorEdge from = unit.edges().get(unit.bar() == FLY_UP ? 1 : 0);
            double fromM = heightM(unit, from);
            if (unit.bar() == FLY_DOWN) {
                highestM = Math.min(highestM, fromM);
            } else if (lowest == null || fromM > lowest.heightM()) {
                lowest = new OnSlopeBound(unit.id(), from.angleDeg(), fromM);
            }
            if (unit.bar() == WING) {
                hasWing = true;
                highestM = Math.min(highestM, heightM(unit, unit.edges().get(1)));
            }
        }
        return lowest == null || lowest.heightM() >= highestM || !hasWing ? Optional.empty() : Optional.of(lowest);
    }

    private static double heightM(UnitPlan unit, SectorEdge edge) {
        return unit.place().heightM() + unit.axisDistanceM(ORIGIN) * Angles.tanDeg(edge.angleDeg());
    }

    /** Returns whether a unit shows what its place in the form asks for, and stands before the eye. */
    private static boolean showsItsPart(UnitPlan unit) {
        if (unit.edges().size() != 2 || unit.axisDistanceM(ORIGIN) <= 0) {
            return false;
        }
        Light below = unit.edges().get(0).below();
        return unit.edges().get(0).above().equals(Light.WHITE) && unit.edges().get(1).above().equals(Light.DARK)
                && below.equals(unit.bar() == FLY_DOWN ? Light.DARK : Light.RED) && unit.bar() >= WING && unit.bar() <= FLY_DOWN;
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        boolean wingRed = false;
        boolean wingWhite = false;
        boolean flyUp = false;
        boolean flyDown = false;
        for (SeenUnit lamp : seen) {
            Colour colour = lamp.light().colour();
            boolean lit = colour != Colour.NONE;
            wingRed |= lamp.unit().bar() == WING && colour == Colour.RED;
            wingWhite |= lamp.unit().bar() == WING && colour == Colour.WHITE;
            flyUp |= lamp.unit().bar() == FLY_UP && lit;
            flyDown |= lamp.unit().bar() == FLY_DOWN && lit;
        }
        Meaning meaning = Meaning.OUTSIDE;
        if (wingRed && !wingWhite) {
            meaning = Meaning.WELL_BELOW;
        } else if (wingWhite && !wingRed && !(flyUp && flyDown)) {
            meaning = flyUp ? Meaning.BELOW : flyDown ? Meaning.ABOVE : Meaning.ON_SLOPE;
        }
        return Map.of("", meaning);
    }
}
