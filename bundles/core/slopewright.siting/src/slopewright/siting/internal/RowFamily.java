package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.GlidePathIntercept;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.LevelSolution;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.RuleSet;

/**
 * A row of sharp-transition units square to the runway, each set higher than the next one outward.
 *
 * <p>Distance without a glide path: the lowest eye position with an on-slope signal, which is the setting that bounds the signal from
 * below less an allowance, gives the required eye height over the threshold (Doc 9157 Part 4, 8.3 as remembered; US: the lowest
 * on-course signal). With a glide path: best agreement of both aids for the mean eye-to-antenna height.
 */
abstract class RowFamily implements IndicatorFamily {

    private static final FramePoint ORIGIN = new FramePoint(0, 0, 0);

    private final String key;
    private final String name;
    private final int count;
    private final List<Integer> counts;
    private final Names names;

    RowFamily(String key, String name, int count) {
        this.key = key;
        this.name = name;
        this.count = count;
        counts = List.of(count);
        names = new Names(key + ".");
    }

    /** The values that a row asks for. */
    private static final class Names {

        private final RuleName helipadSector = RuleName.of("helipad.on-slope-sector");
        private final RuleName helipadOuterStep;
        private final RuleName steepFrom;
        private final RuleName verySteepFrom;
        private final RuleName steepDifference;
        private final RuleName verySteepDifference;
        private final RuleName outer;
        private final RuleName inner;
        private final RuleName widenedOuter;
        private final RuleName widenedInner;
        private final RuleName transition;
        private final RuleName levelFrom;
        private final RuleName interceptTolerance;
        private final RuleName groupFourExtra;
        private final RuleName innerUnit;
        private final RuleName spacing;
        private final RuleName leastSpacing;
        private final RuleName reducedSpacing;
        private final RuleName smallRunwayInnerUnit;

        Names(String prefix) {
            helipadOuterStep = RuleName.of(prefix + "helipad-outer-step");
            steepFrom = RuleName.of(prefix + "steep-from");
            verySteepFrom = RuleName.of(prefix + "very-steep-from");
            steepDifference = RuleName.of(prefix + "steep-difference");
            verySteepDifference = RuleName.of(prefix + "very-steep-difference");
            outer = RuleName.of(prefix + "outer-offset");
            inner = RuleName.of(prefix + "inner-offset");
            widenedOuter = RuleName.of(prefix + "glide-path-outer-offset");
            widenedInner = RuleName.of(prefix + "glide-path-inner-offset");
            transition = RuleName.of(prefix + "transition-width");
            levelFrom = RuleName.of(prefix + "level-correction-from");
            interceptTolerance = RuleName.of(prefix + "glide-path-distance-tolerance");
            groupFourExtra = RuleName.of(prefix + "group-4-extra-distance");
            innerUnit = RuleName.of(prefix + "inner-unit-to-edge");
            spacing = RuleName.of(prefix + "unit-spacing");
            leastSpacing = RuleName.of(prefix + "unit-spacing-least");
            reducedSpacing = RuleName.of(prefix + "reduced-unit-spacing");
            smallRunwayInnerUnit = RuleName.of(prefix + "small-runway-inner-unit-to-edge");
        }
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.ROW);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Integer> unitCounts() {
        return counts;
    }

    @Override
    public boolean atHelipads() {
        return true;
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        layout.unitCount();
        double[] offsets = offsetsDeg(layout, widened(layout));
        double lowestSetting = layout.slopeDeg() + offsets[offsets.length - 1];
        double lowest = layout.slopeDeg() + offsets[offsets.length / 2] - layout.allowanceDeg();
        LayoutBuilder.Laid laid = lay(layout, lowest, place -> units(layout, offsets, place));
        LayoutBuilder.Place place = laid.place();
        notePathBasis(layout, laid);
        OptionalDouble nominal = request.atHelipad() ? OptionalDouble.of(layout.nominalHeightM(place.lens(), layout.slopeDeg()))
                : OptionalDouble.empty();
        return layout.finish(laid, nominal, new Surfaces.Anchor(lowestSetting, place.distanceM(),
                UnshiftedDistance.of(place.distanceM()), place.lensM()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        double lowestSetting = units.stream().mapToDouble(UnitPlan::settingDeg).min().orElseThrow();
        layout.reader().minutes(names.transition);
        FramePoint centre = LayoutBuilder.centre(units);
        OptionalDouble nominal = request.atHelipad() ? OptionalDouble.of(layout.nominalHeightM(centre, layout.slopeDeg()))
                : OptionalDouble.empty();
        return layout.laid(units, centre, lowestSetting, nominal, unshifted);
    }

    /**
     * A row reads on slope from where the last of its outer half turns white, up to where the first of its inner half does, on every side
     * that it stands on. Units that show something else than red below white are searched edge by edge.
     */
    @Override
    public Optional<OnSlopeBound> lowestOnSlope(List<UnitPlan> units, double allowanceDeg) {
        List<UnitPlan> ordered = Signals.inOrder(units);
        if (ordered.size() % count != 0) {
            return IndicatorFamily.super.lowestOnSlope(units, allowanceDeg);
        }
        UnitPlan lowest = null;
        double lowestM = Double.NEGATIVE_INFINITY;
        double highestM = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ordered.size(); i++) {
            UnitPlan unit = ordered.get(i);
            double distance = unit.axisDistanceM(ORIGIN);
            if (distance <= 0 || !turnsFromRedToWhite(unit)) {
                return IndicatorFamily.super.lowestOnSlope(units, allowanceDeg);
            }
            double height = unit.place().heightM() + distance * Angles.tanDeg(unit.edges().get(0).angleDeg());
            if (i % count < count / 2) {
                highestM = Math.min(highestM, height);
            } else if (height >= lowestM) {
                lowest = unit;
                lowestM = height;
            }
        }
        if (lowest == null || highestM - lowestM <= Signals.LEAST_BAND_M) {
            return Optional.empty();
        }
        double angle = lowest.edges().get(0).angleDeg() - allowanceDeg;
        return Optional.of(new OnSlopeBound(lowest.id(), angle,
                lowest.place().heightM() + lowest.axisDistanceM(ORIGIN) * Angles.tanDeg(angle)));
    }

    private static boolean turnsFromRedToWhite(UnitPlan unit) {
        return unit.edges().size() == 1 && Light.RED.equals(unit.edges().get(0).below()) && Light.WHITE.equals(unit.edges().get(0).above());
    }

    private static boolean isGroup4(SitingRequest request) {
        return request.number(Input.HEIGHT_GROUP).filter(group -> Math.round(group) == 4).isPresent();
    }

    private boolean sitesOnIntercept(LayoutBuilder layout) {
        return layout.reader().hasMetres(names.interceptTolerance);
    }

    private boolean widened(LayoutBuilder layout) {
        SitingRequest request = layout.request();
        boolean possible = layout.reader().has(names.widenedOuter.minutes());
        boolean wanted = request.settings().map(form -> form == SitingRequest.Settings.GLIDE_PATH)
                .orElse(request.hasGlidePath() && (!sitesOnIntercept(layout) || isGroup4(request)));
        if (wanted && !possible && request.settings().isPresent()) {
            layout.reader().note(Message.of("siting.note.no-widened"));
        }
        return wanted && possible;
    }

    /** Returns the settings less the slope from the runway outward, so highest first. */
    private double[] offsetsDeg(LayoutBuilder layout, boolean widened) {
        RuleReader reader = layout.reader();
        if (layout.request().atHelipad()) {
            double half = reader.sectorDegrees(names.helipadSector) / 2;
            return count == 2 ? new double[] {half, -half} : fromHalf(half, half + reader.degrees(names.helipadOuterStep));
        }
        double steep = steepDifferenceDeg(layout);
        if (steep > 0) {
            if (widened) {
                reader.note(Message.of("siting.note.no-widened-steep"));
            }
            return count == 2 ? new double[] {steep / 2, -steep / 2} : fromHalf(steep / 2, steep * 1.5);
        }
        double outer = reader.sectorDegrees(widened ? names.widenedOuter : names.outer);
        return count == 2 ? new double[] {outer, -outer}
                : fromHalf(reader.sectorDegrees(widened ? names.widenedInner : names.inner), outer);
    }

    private static double[] fromHalf(double inner, double outer) {
        return new double[] {outer, inner, -inner, -outer};
    }

    private double steepDifferenceDeg(LayoutBuilder layout) {
        RuleReader reader = layout.reader();
        if (reader.rules().find(names.steepFrom.degrees()).filter(from -> layout.slopeDeg() > from.value()).isEmpty()) {
            return 0;
        }
        boolean very = layout.slopeDeg() > reader.rules().value(names.verySteepFrom.degrees()).value();
        return reader.degrees(very ? names.verySteepDifference : names.steepDifference);
    }

    private LayoutBuilder.Laid lay(LayoutBuilder layout, double lowestDeg, Function<LayoutBuilder.Place, List<UnitPlan>> units) {
        SitingRequest request = layout.request();
        if (request.atHelipad() || request.has(Input.DISTANCE)) {
            LayoutBuilder.Place place = request.atHelipad() ? layout.helipadPlace() : layout.given();
            return layout.lay(place, units.apply(place));
        }
        double levelFrom = layout.reader().metres(names.levelFrom);
        Optional<GlidePathIntercept> path = GlidePathIntercept.of(request, layout.slopeDeg());
        if (path.isEmpty()) {
            return layout.solveLeast(EyeTarget.eyeHeightM(request, layout.reader()), lowestDeg, levelFrom, units);
        }
        if (request.has(Input.EYE_HEIGHT)) {
            layout.reader().note(Message.of("siting.note.eye-height-not-used", Words.m(request.need(Input.EYE_HEIGHT))));
        }
        layout.reader().note(path.get().note());
        if (!request.has(Input.GLIDE_PATH_ANGLE)) {
            layout.reader().note(Message.of("siting.note.glide-path-angle-taken", Words.deg(layout.slopeDeg())));
        }
        if (sitesOnIntercept(layout)) {
            LayoutBuilder.Place intercept = atIntercept(layout, path.get());
            return layout.lay(intercept, units.apply(intercept));
        }
        LayoutBuilder.Place place = besideGlidePath(layout, path.get(), levelFrom);
        LayoutBuilder.Laid laid = layout.lay(place, units.apply(place));
        OptionalDouble least = EyeTarget.leastEyeHeightM(request, layout.reader());
        if (least.isEmpty() || laid.bound().heightM() >= least.getAsDouble()) {
            return laid;
        }
        LayoutBuilder.Laid farther = layout.solveLeast(least.getAsDouble(), lowestDeg, levelFrom, units);
        layout.reader().note(Message.of("siting.note.glide-path-minimum", Words.m(place.distanceM()),
                Words.m(laid.bound().heightM() - request.need(Input.EYE_TO_WHEEL)),
                Words.m(least.getAsDouble() - request.need(Input.EYE_TO_WHEEL)), Words.m(farther.place().distanceM())));
        return farther;
    }

    private LayoutBuilder.Place atIntercept(LayoutBuilder layout, GlidePathIntercept path) {
        double distance = path.originM() + (isGroup4(layout.request()) ? groupFourExtraM(layout) : 0);
        return new LayoutBuilder.Place(new LevelSolution(distance, 0, LevelSolution.Method.GLIDE_PATH, distance,
                layout.ground().lensAt(distance)));
    }

    /**
     * The slope through the origin of the glide path, raised by the mean height of the eye over the antenna, meets the lenses (Annex 14
     * Vol I Fig 5-19 b). Where the wheels would then have less than the minimum clearance, the row goes out until they have it (c there).
     */
    private static LayoutBuilder.Place besideGlidePath(LayoutBuilder layout, GlidePathIntercept path, double levelFromM) {
        double mean = meanEyeToAntennaM(layout.request());
        layout.reader().note(Message.of("siting.note.beside-glide-path", Words.m(path.originM()), Words.m(mean)));
        double height = path.groundM() + path.originM() * Angles.tanDeg(layout.slopeDeg()) + mean;
        return layout.solve(height, layout.slopeDeg(), levelFromM);
    }

    private static double meanEyeToAntennaM(SitingRequest request) {
        if (!request.has(Input.EYE_TO_ANTENNA_MIN) && !request.has(Input.EYE_TO_ANTENNA_MAX)) {
            throw SitingException.missing(Input.EYE_TO_ANTENNA_MIN, Input.EYE_TO_ANTENNA_MAX);
        }
        double least = request.number(Input.EYE_TO_ANTENNA_MIN).orElseGet(() -> request.need(Input.EYE_TO_ANTENNA_MAX));
        double most = request.number(Input.EYE_TO_ANTENNA_MAX).orElse(least);
        if (most < least) {
            throw new SitingException(Message.of("siting.refused.antenna-order", Input.EYE_TO_ANTENNA_MAX.message(),
                    Input.EYE_TO_ANTENNA_MIN.message()));
        }
        return (least + most) / 2;
    }

    private double groupFourExtraM(LayoutBuilder layout) {
        if (!layout.reader().hasMetres(names.groupFourExtra)) {
            return 0;
        }
        double extra = layout.reader().metres(names.groupFourExtra);
        layout.reader().note(Message.of("siting.note.group-4", Words.mFt(extra)));
        return extra;
    }

    private void notePathBasis(LayoutBuilder layout, LayoutBuilder.Laid laid) {
        if (sitesOnIntercept(layout) && !layout.request().hasGlidePath() && !layout.request().has(Input.DISTANCE)) {
            double onPath = layout.solve(laid.bound().heightM(), layout.slopeDeg(), 0).distanceM();
            layout.reader().note(Message.of("siting.note.path-basis", Words.mFt(laid.place().distanceM()), Words.mFt(onPath)));
        }
    }

    private List<UnitPlan> units(LayoutBuilder layout, double[] offsets, LayoutBuilder.Place place) {
        RuleReader reader = layout.reader();
        double[] lateral = lateralM(layout);
        double width = reader.minutes(names.transition);
        boolean outerFirst = "outer-first".equals(reader.rules().descriptor().numbering());
        List<UnitPlan> units = new ArrayList<>();
        for (int i = 0; i < offsets.length; i++) {
            String id = outerFirst ? String.valueOf((char) ('A' + offsets.length - 1 - i)) : String.valueOf(i + 1);
            FramePoint lens = new FramePoint(place.distanceM(), lateral[0] + i * lateral[1], place.lensM());
            units.add(UnitPlan.twoColour(id, 1, lens, layout.slopeDeg() + offsets[i], width, Light.RED, Light.WHITE));
        }
        return Sides.place(units, layout.request().side());
    }

    /** Returns the inner unit from the centre line, and the spacing. */
    private double[] lateralM(LayoutBuilder layout) {
        RuleReader reader = layout.reader();
        String prefix = layout.prefix();
        SitingRequest request = layout.request();
        boolean lowCode = request.number(Input.CODE).filter(code -> Math.round(code) <= 2).isPresent();
        String pattern = request.option("layout").orElse(lowCode && reader.hasMetres(names.reducedSpacing) ? "reduced" : "standard");
        RuleName edge = names.innerUnit;
        RuleName spacing = names.spacing;
        if (!"standard".equals(pattern)) {
            RuleName spacingOfPattern = RuleName.of(prefix + pattern + "-unit-spacing");
            if (reader.hasMetres(spacingOfPattern)) {
                edge = RuleName.of(prefix + pattern + "-inner-unit-to-edge");
                spacing = spacingOfPattern;
                reader.note(Message.of("reduced".equals(pattern) ? "siting.note.layout-reduced" : "siting.note.layout",
                        Words.term("layout." + pattern)));
            } else if ("reduced".equals(pattern) && reader.hasMetres(names.smallRunwayInnerUnit)) {
                edge = names.smallRunwayInnerUnit;
                spacing = names.leastSpacing;
            } else {
                throw new SitingException(Message.of("siting.refused.layout", reader.rules().descriptor().name(), Words.name(pattern),
                        Words.name(name)));
            }
        }
        return new double[] {layout.halfWidthM() + reader.metres(edge), reader.metres(spacing)};
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        Meaning meaning = null;
        for (int first = 0; first + count <= seen.size(); first += count) {
            Meaning ofRow = ofRow(seen.subList(first, first + count));
            meaning = meaning == null || meaning == ofRow ? ofRow : Meaning.OUTSIDE;
        }
        return Map.of("", meaning == null ? Meaning.OUTSIDE : meaning);
    }

    /** Reads one row from the runway outward: reds on the runway side, whites outside, or it is no signal of a row. */
    private Meaning ofRow(List<SeenUnit> row) {
        int reds = 0;
        boolean white = false;
        for (SeenUnit seen : row) {
            if (Light.RED.equals(seen.light()) && !white) {
                reds++;
            } else if (Light.WHITE.equals(seen.light())) {
                white = true;
            } else {
                return Meaning.OUTSIDE;
            }
        }
        if (reds * 2 == count) {
            return Meaning.ON_SLOPE;
        }
        if (reds == 0 || reds == count) {
            return reds == 0 ? Meaning.WELL_ABOVE : Meaning.WELL_BELOW;
        }
        return reds * 2 < count ? Meaning.ABOVE : Meaning.BELOW;
    }
}
