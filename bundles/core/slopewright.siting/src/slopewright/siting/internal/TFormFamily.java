package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.geometry.Angles;
import slopewright.geometry.Decimals;
import slopewright.geometry.FramePoint;
import slopewright.siting.Colour;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * A wing bar of four units cut by a line of six: three fly-up units towards the threshold, three fly-down units beyond. Each unit is
 * moved along the runway for its own level difference, so that its plane passes where it would on level ground.
 */
abstract class TFormFamily implements IndicatorFamily {

    private static final int LEG_UNITS = 3;

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
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        RuleReader reader = draft.reader();
        draft.unitCount();
        if (bothSides && request.side() == Side.RIGHT || !bothSides && request.side() == Side.BOTH) {
            throw new SitingException(bothSides ? name
                    + " stands on both sides; one side alone is the abbreviated form (t-form-abbreviated)"
                    : name + " stands on one side; on both sides it is the full form (t-form)");
        }
        double slope = draft.slopeDeg();
        LayoutBuilder.Place bar = request.has(Input.DISTANCE) ? draft.given()
                : new LayoutBuilder.Place(draft.ground().solve(eyeHeightM(draft), slope, 0), draft.ground());
        double eyeHeight = bar.distanceM() * Angles.tanDeg(slope) + bar.lensM();
        List<UnitPlan> units = Sides.place(oneSide(draft, bar, eyeHeight), bothSides ? Side.BOTH : request.side());
        double nearest = units.stream().mapToDouble(unit -> unit.place().alongM()).min().orElseThrow();
        if (nearest <= 0) {
            throw new SitingException(String.format(Locale.ROOT,
                    "the fly-up unit nearest to the approach would stand %.1f m before the threshold; "
                    + "raise the eye height", -nearest));
        }
        double redLimit = redLimitDeg(draft);
        boolean raised = redLimit > reader.degrees(draft.prefix() + "red-limit");
        return draft.finish(bar, bar.distanceM(), units, OptionalDouble.of(eyeHeight), new Surfaces.Anchor(redLimit, slope, nearest, nearest,
                bar.lensM(),
                raised ? OptionalDouble.of(redLimit) : OptionalDouble.empty()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, double nominalDistanceM) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        double cutOff = LayoutBuilder.bar(units, 2).stream().mapToDouble(UnitPlan::settingDeg).max().orElseThrow();
        double red = LayoutBuilder.bar(units, 1).get(0).settingDeg();
        boolean raised = red > draft.reader().degrees(draft.prefix() + "red-limit");
        FramePoint bar = LayoutBuilder.centre(LayoutBuilder.bar(units, 1));
        return draft.laid(units, bar, red, LayoutBuilder.heightOn(bar, cutOff), nominalDistanceM,
                raised ? OptionalDouble.of(red) : OptionalDouble.empty());
    }

    private static double eyeHeightM(LayoutBuilder draft) {
        RuleReader reader = draft.reader();
        SitingRequest request = draft.request();
        if (!request.has(Input.EYE_HEIGHT) && !request.has(Input.EYE_TO_WHEEL)) {
            double nominal = reader.metres(draft.prefix() + "nominal-eye-height");
            reader.note(String.format(Locale.ROOT, "No eye height and no aeroplane were given: the nominal %.2f m is used.", nominal));
            return nominal;
        }
        double height = EyeTarget.eyeHeightM(request, reader);
        double from = reader.metres(draft.prefix() + "eye-height-from");
        double to = reader.metres(draft.prefix() + "eye-height-to");
        if (height < from || height > to) {
            reader.note(String.format(Locale.ROOT, "The on-slope eye height of %.2f m is outside the usual %.0f m to %.0f m.", height, from,
                    to));
        }
        return height;
    }

    private static double parsed(String redLimit) {
        try {
            return Decimals.parse(redLimit);
        } catch (IllegalArgumentException e) {
            throw new SitingException("the red limit (red-limit-deg): " + e.getMessage());
        }
    }

    private static double redLimitDeg(LayoutBuilder draft) {
        double standard = draft.reader().degrees(draft.prefix() + "red-limit");
        double chosen = draft.request().option("red-limit-deg").map(TFormFamily::parsed).orElse(standard);
        double highest = draft.slopeDeg() - Angles.minutesToDeg(draft.reader().minutes(draft.prefix() + "fly-up-step") * (LEG_UNITS - 1));
        if (chosen < standard || chosen >= highest) {
            throw new SitingException(String.format(Locale.ROOT, "the red limit lies from %.2f° to below %.2f°, not at %.2f°", standard,
                    highest,
                    chosen));
        }
        return chosen;
    }

    /** Lays out one side on the right of the centre line. */
    private List<UnitPlan> oneSide(LayoutBuilder draft, LayoutBuilder.Place bar, double eyeHeightM) {
        RuleReader reader = draft.reader();
        String prefix = draft.prefix();
        double slope = draft.slopeDeg();
        double leg = draft.halfWidthM() + reader.metres(prefix + "leg-to-edge");
        double inner = reader.metres(prefix + "bar-inner-offset");
        double outer = reader.metres(prefix + "bar-outer-offset");
        double first = reader.metres(prefix + "leg-first-offset");
        double spacing = reader.metres(prefix + "leg-spacing");
        double red = redLimitDeg(draft);
        double top = reader.degrees(prefix + "beam-top");
        double width = reader.minutes(prefix + "transition-width");
        double upStep = reader.degrees(prefix + "fly-up-step");
        double downStep = reader.degrees(prefix + "fly-down-step");
        Edges edges = new Edges(red, top, width);
        double[] across = {leg - outer, leg - inner, leg + inner, leg + outer};
        List<UnitPlan> units = new ArrayList<>();
        for (int i = 0; i < across.length; i++) {
            units.add(new UnitPlan("W" + (i + 1), 1, new FramePoint(bar.distanceM(), across[i], bar.lensM()), red, 0, edges.wing()));
        }
        double levelBar = draft.request().has(Input.DISTANCE) ? bar.distanceM() : eyeHeightM / Angles.tanDeg(slope);
        for (int n = 0; n < LEG_UNITS; n++) {
            double up = slope - n * upStep;
            double down = slope + n * downStep;
            FramePoint upPlace = moved(draft, levelBar - first - n * spacing, up, leg);
            FramePoint downPlace = moved(draft, levelBar + first + n * spacing, down, leg);
            units.add(new UnitPlan("U" + (n + 1), 2, upPlace, up, 0, edges.flyUp(up)));
            units.add(new UnitPlan("D" + (n + 1), 3, downPlace, down, 0, edges.flyDown(down)));
        }
        return units;
    }

    /** Returns the place where a unit's cut-off plane passes as it would on level ground. */
    private static FramePoint moved(LayoutBuilder draft, double levelPlaceM, double cutOffDeg, double rightM) {
        if (draft.request().has(Input.DISTANCE)) {
            return new FramePoint(levelPlaceM, rightM, draft.ground().lensAt(levelPlaceM));
        }
        double along = draft.ground().solve(levelPlaceM * Angles.tanDeg(cutOffDeg), cutOffDeg, 0).distanceM();
        return new FramePoint(along, rightM, draft.ground().lensAt(along));
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

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        boolean wingRed = false;
        boolean wingWhite = false;
        boolean flyUp = false;
        boolean flyDown = false;
        for (SeenUnit one : seen) {
            Colour colour = one.light().colour();
            boolean lit = colour != Colour.NONE;
            wingRed |= one.unit().bar() == 1 && colour == Colour.RED;
            wingWhite |= one.unit().bar() == 1 && colour == Colour.WHITE;
            flyUp |= one.unit().bar() == 2 && lit;
            flyDown |= one.unit().bar() == 3 && lit;
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
