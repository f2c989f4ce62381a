package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.LevelSolution;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SeenUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * A row of sharp-transition units square to the runway, each set higher than the next one outward.
 *
 * <p>Distance without a glide path: the lowest eye position with an on-slope signal, which is the setting that bounds the signal from
 * below less an allowance, gives the required eye height over the threshold (Doc 9157 Part 4, 8.3 as remembered; US: the lowest
 * on-course signal). With a glide path: best agreement of both aids for the mean eye-to-antenna height.
 */
abstract class RowFamily implements IndicatorFamily {

    private final String key;
    private final String name;
    private final int count;

    RowFamily(String key, String name, int count) {
        this.key = key;
        this.name = name;
        this.count = count;
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
        return List.of(count);
    }

    @Override
    public boolean atHelipads() {
        return true;
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        draft.unitCount();
        boolean widened = widened(draft);
        double[] offsets = offsetsDeg(draft, widened);
        double lowestSetting = draft.slopeDeg() + offsets[offsets.length - 1];
        double bounding = draft.slopeDeg() + offsets[offsets.length / 2];
        double lowest = bounding - draft.allowanceDeg();
        LayoutBuilder.Place place = place(draft, lowest);
        double eyeHeight = request.atHelipad() ? place.distanceM() * Angles.tanDeg(draft.slopeDeg()) + place.lensM()
                : place.distanceM() * Angles.tanDeg(lowest) + place.lensM();
        if (!request.atHelipad() && !clearanceWasAsked(request)) {
            EyeTarget.wheelClearanceM(request, eyeHeight).ifPresent(clearance -> EyeTarget.noteVerdict(request, draft.reader(), clearance));
        }
        notePathBasis(draft, place, eyeHeight);
        OptionalDouble nominal = request.atHelipad() ? OptionalDouble.of(eyeHeight) : OptionalDouble.empty();
        return draft.finish(place, place.distanceM(), units(draft, offsets, place), nominal,
                new Surfaces.Anchor(lowestSetting, lowest, place.distanceM(), place.distanceM(), place.lensM(), OptionalDouble.empty()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, double nominalDistanceM) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        List<UnitPlan> lowestFirst = new ArrayList<>(units);
        lowestFirst.sort(Comparator.comparingDouble(UnitPlan::settingDeg));
        draft.reader().minutes(draft.prefix() + "transition-width");
        FramePoint centre = LayoutBuilder.centre(units);
        OptionalDouble nominal = request.atHelipad() ? LayoutBuilder.heightOn(centre, draft.slopeDeg()) : OptionalDouble.empty();
        return draft.laid(units, centre, lowestFirst.get(0).settingDeg(), nominal, nominalDistanceM, OptionalDouble.empty());
    }

    /** Returns whether the distance follows from a wheel clearance, which then has its own note. */
    private static boolean clearanceWasAsked(SitingRequest request) {
        return !request.hasGlidePath() && !request.has(Input.DISTANCE) && !request.has(Input.EYE_HEIGHT)
                && !request.has(Input.HEIGHT_GROUP);
    }

    private static boolean isGroup4(SitingRequest request) {
        return request.number(Input.HEIGHT_GROUP).filter(group -> Math.round(group) == 4).isPresent();
    }

    private boolean sitesOnIntercept(LayoutBuilder draft) {
        return draft.reader().hasMetres(draft.prefix() + "glide-path-distance-tolerance");
    }

    private boolean widened(LayoutBuilder draft) {
        SitingRequest request = draft.request();
        boolean possible = draft.reader().has(draft.prefix() + "glide-path-outer-offset-min");
        boolean wanted = request.settings().map(form -> form == SitingRequest.Settings.GLIDE_PATH)
                .orElse(request.hasGlidePath() && (!sitesOnIntercept(draft) || isGroup4(request)));
        if (wanted && !possible && request.settings().isPresent()) {
            draft.reader().note("The rule set gives no widened settings for this family; the standard ones are used.");
        }
        return wanted && possible;
    }

    /** Returns the settings less the slope from the runway outward, so highest first. */
    private double[] offsetsDeg(LayoutBuilder draft, boolean widened) {
        RuleReader reader = draft.reader();
        String prefix = draft.prefix();
        if (draft.request().atHelipad()) {
            double half = reader.sectorDegrees("helipad.on-slope-sector") / 2;
            return count == 2 ? new double[] {half, -half} : fromHalf(half, half + reader.degrees(prefix + "helipad-outer-step"));
        }
        double steep = steepDifferenceDeg(draft);
        if (steep > 0) {
            if (widened) {
                reader.note("No widened settings are known for steep slopes; the steep standard settings are used.");
            }
            return count == 2 ? new double[] {steep / 2, -steep / 2} : fromHalf(steep / 2, steep * 1.5);
        }
        String form = widened ? "glide-path-" : "";
        double outer = reader.sectorDegrees(prefix + form + "outer-offset");
        return count == 2 ? new double[] {outer, -outer} : fromHalf(reader.sectorDegrees(prefix + form + "inner-offset"), outer);
    }

    private static double[] fromHalf(double inner, double outer) {
        return new double[] {outer, inner, -inner, -outer};
    }

    private static double steepDifferenceDeg(LayoutBuilder draft) {
        RuleReader reader = draft.reader();
        String prefix = draft.prefix();
        if (!reader.has(prefix + "steep-from-deg") || draft.slopeDeg() <= reader.rules().value(prefix + "steep-from-deg").value()) {
            return 0;
        }
        boolean very = draft.slopeDeg() > reader.rules().value(prefix + "very-steep-from-deg").value();
        return reader.degrees(prefix + (very ? "very-steep-difference" : "steep-difference"));
    }

    private LayoutBuilder.Place place(LayoutBuilder draft, double lowestDeg) {
        SitingRequest request = draft.request();
        if (request.has(Input.DISTANCE)) {
            return draft.given();
        }
        if (request.atHelipad()) {
            return draft.helipadPlace();
        }
        double levelFrom = draft.reader().metres(draft.prefix() + "level-correction-from");
        if (!request.hasGlidePath()) {
            return new LayoutBuilder.Place(draft.ground().solve(EyeTarget.eyeHeightM(request, draft.reader()), lowestDeg, levelFrom),
                    draft.ground());
        }
        if (request.has(Input.EYE_HEIGHT)) {
            draft.reader().note(String.format(Locale.ROOT,
                    "There is a glide path: the distance follows from it and not from the eye height of %.2f m.",
                    request.need(Input.EYE_HEIGHT)));
        }
        double tan = Angles.tanDeg(draft.slopeDeg());
        double origin = request.number(Input.GLIDE_PATH_ORIGIN)
                .orElseGet(() -> request.number(Input.REFERENCE_DATUM_HEIGHT).orElseThrow() / tan);
        if (sitesOnIntercept(draft)) {
            double extra = isGroup4(request) ? groupFourExtraM(draft) : 0;
            double distance = origin + extra;
            return new LayoutBuilder.Place(new LevelSolution(distance, 0, "glide path intercept", distance, draft.ground().lensAt(distance)),
                    draft.ground());
        }
        if (!request.has(Input.EYE_TO_ANTENNA_MIN) && !request.has(Input.EYE_TO_ANTENNA_MAX)) {
            throw SitingException.missing(Input.EYE_TO_ANTENNA_MIN, Input.EYE_TO_ANTENNA_MAX);
        }
        double least = request.number(Input.EYE_TO_ANTENNA_MIN).orElseGet(() -> request.need(Input.EYE_TO_ANTENNA_MAX));
        double most = request.number(Input.EYE_TO_ANTENNA_MAX).orElse(least);
        if (most < least) {
            throw new SitingException("the greatest eye-to-antenna height (eye-to-antenna-max-m) is less than the smallest");
        }
        double mean = (least + most) / 2;
        draft.reader().note(String.format(Locale.ROOT,
                "Sited beside the glide path: origin %.2f m from the threshold plus the mean eye-to-antenna height of %.2f m along the "
                        + "slope.", origin,
                mean));
        return new LayoutBuilder.Place(draft.ground().solve(origin * tan + mean, draft.slopeDeg(), levelFrom), draft.ground());
    }

    private static double groupFourExtraM(LayoutBuilder draft) {
        if (!draft.reader().hasMetres(draft.prefix() + "group-4-extra-distance")) {
            return 0;
        }
        draft.reader().note("Height group 4 beside a glide path: 300 ft beyond the intercept; read for Army airfields, from memory for "
                + "others.");
        return draft.reader().metres(draft.prefix() + "group-4-extra-distance");
    }

    private void notePathBasis(LayoutBuilder draft, LayoutBuilder.Place place, double eyeHeight) {
        if (sitesOnIntercept(draft) && !draft.request().hasGlidePath() && !draft.request().has(Input.DISTANCE)) {
            double onPath = draft.ground().solve(eyeHeight, draft.slopeDeg(), 0).distanceM();
            draft.reader().note(String.format(Locale.ROOT,
                    "Crossing height on the lowest on-course signal: %.2f m (%.2f ft). On the path angle instead: %.2f m (%.2f ft).",
                    place.distanceM(), Lengths.metresToFeet(place.distanceM()), onPath, Lengths.metresToFeet(onPath)));
        }
    }

    private List<UnitPlan> units(LayoutBuilder draft, double[] offsets, LayoutBuilder.Place place) {
        RuleReader reader = draft.reader();
        double[] lateral = lateralM(draft);
        double width = reader.minutes(draft.prefix() + "transition-width");
        boolean outerFirst = "outer-first".equals(reader.rules().descriptor().numbering());
        List<UnitPlan> units = new ArrayList<>();
        for (int i = 0; i < offsets.length; i++) {
            String id = outerFirst ? String.valueOf((char) ('A' + offsets.length - 1 - i)) : String.valueOf(i + 1);
            FramePoint lens = new FramePoint(place.distanceM(), lateral[0] + i * lateral[1], place.lensM());
            units.add(UnitPlan.twoColour(id, 1, lens, draft.slopeDeg() + offsets[i], width, Light.RED, Light.WHITE));
        }
        return Sides.place(units, draft.request().side());
    }

    /** Returns the inner unit from the centre line, and the spacing. */
    private double[] lateralM(LayoutBuilder draft) {
        RuleReader reader = draft.reader();
        String prefix = draft.prefix();
        SitingRequest request = draft.request();
        boolean lowCode = request.number(Input.CODE).filter(code -> Math.round(code) <= 2).isPresent();
        String layout = request.option("layout").orElse(lowCode && reader.hasMetres(prefix + "reduced-unit-spacing") ? "reduced"
                : "standard");
        String edge = prefix + "inner-unit-to-edge";
        String spacing = prefix + "unit-spacing";
        if (!"standard".equals(layout)) {
            if (reader.hasMetres(prefix + layout + "-unit-spacing")) {
                edge = prefix + layout + "-inner-unit-to-edge";
                spacing = prefix + layout + "-unit-spacing";
                reader.note("The " + layout + " layout is used" + ("reduced".equals(layout) ? "; its usable range is shorter." : "."));
            } else if ("reduced".equals(layout) && reader.hasMetres(prefix + "small-runway-inner-unit-to-edge")) {
                edge = prefix + "small-runway-inner-unit-to-edge";
                spacing = prefix + "unit-spacing-least";
            } else {
                throw new SitingException("rule set " + reader.rules().key() + " has no layout '" + layout + "' for " + name);
            }
        }
        return new double[] {draft.halfWidthM() + reader.metres(edge), reader.metres(spacing)};
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
        for (SeenUnit one : row) {
            if (Light.RED.equals(one.light()) && !white) {
                reds++;
            } else if (Light.WHITE.equals(one.light())) {
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
