package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.siting.Colour;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.LevelSolution;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SeenUnit;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * Bars of red and white units one behind the other. Two neighbouring bars make a path: the near one white and the far one red.
 * The eye height belongs to the boundary of the near bar, the lowest on-path signal.
 */
abstract class BarFamily implements IndicatorFamily {

    private final String key;
    private final String name;
    private final List<String> bars;
    private final Map<Integer, int[]> boxes;
    private final int twoSidedFrom;

    /**
     * Makes a family.
     *
     * @param bars         names of the bars, near to far, as in the keys of the rule set
     * @param boxes        units of each bar on one side by number of units, the usual one first
     * @param twoSidedFrom number of units from which both sides are used
     */
    BarFamily(String key, String name, List<String> bars, Map<Integer, int[]> boxes, int twoSidedFrom) {
        this.key = key;
        this.name = name;
        this.bars = bars;
        this.boxes = boxes;
        this.twoSidedFrom = twoSidedFrom;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BARS);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Integer> unitCounts() {
        return List.copyOf(boxes.keySet());
    }

    @Override
    public List<String> bars() {
        return bars;
    }

    @Override
    public Siting site(SitingRequest given, RuleSet rules) {
        SitingRequest request = withSlope(given);
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        int count = draft.unitCount();
        double[] settings = settingsDeg(draft);
        double[] distances = distancesM(draft, settings);
        checkOrder(settings, distances);
        noteSpacing(draft, distances);
        double lensNear = draft.ground().lensAt(distances[0]);
        for (int i = 1; i < bars.size() - 1; i++) {
            draft.reader().note(String.format(Locale.ROOT, "Lowest eye height over the threshold on the upper path: %.2f m.",
                    distances[i] * Angles.tanDeg(settings[i]) + draft.ground().lensAt(distances[i])));
        }
        LevelSolution level = request.isGiven() ? new LevelSolution(distances[0], 0, "given", distances[0], lensNear)
                : draft.ground().solve(EyeTarget.eyeHeightM(request, draft.reader()), settings[0], 0);
        return draft.finish(new LayoutBuilder.Place(level, draft.ground()), distances[0], units(draft, count, settings,
                distances), OptionalDouble.empty(),
                new Surfaces.Anchor(settings[0], settings[0], distances[0], distances[0], lensNear, OptionalDouble.empty()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, double nominalDistanceM) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        List<UnitPlan> near = LayoutBuilder.bar(units, 1);
        double setting = near.stream().mapToDouble(UnitPlan::settingDeg).min().orElseThrow();
        double[] distances = new double[bars.size()];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = LayoutBuilder.centre(LayoutBuilder.bar(units, i + 1)).alongM();
        }
        noteSpacing(draft, distances);
        return draft.laid(units, LayoutBuilder.centre(near), setting, OptionalDouble.empty(), nominalDistanceM, OptionalDouble.empty());
    }

    /** Takes the slope from given settings where it was not entered: midway of the lowest path. */
    private SitingRequest withSlope(SitingRequest request) {
        List<Double> settings = request.barSettingsDeg();
        if (!settings.isEmpty() && settings.size() != bars.size()) {
            throw new SitingException(name + " has " + bars.size() + " bars; " + settings.size() + " bar settings were given");
        }
        if (!request.barDistancesM().isEmpty() && request.barDistancesM().size() != bars.size()) {
            throw new SitingException(name + " has " + bars.size() + " bars; " + request.barDistancesM().size()
                    + " bar distances were given");
        }
        if (settings.isEmpty() || request.has(Input.SLOPE)) {
            return request;
        }
        double slope = bars.size() == 2 ? (settings.get(0) + settings.get(1)) / 2 : settings.get(1);
        return request.toBuilder().set(Input.SLOPE, slope).build();
    }

    private double[] settingsDeg(LayoutBuilder draft) {
        double[] settings = new double[bars.size()];
        String tradition = draft.request().option("tradition").map(one -> one + "-").orElse("");
        for (int i = 0; i < settings.length; i++) {
            settings[i] = draft.request().barSettingsDeg().isEmpty()
                    ? draft.slopeDeg() + draft.reader().degrees(draft.prefix() + tradition + bars.get(i) + "-offset")
                    : draft.request().barSettingsDeg().get(i);
        }
        return settings;
    }

    private double[] distancesM(LayoutBuilder draft, double[] settings) {
        SitingRequest request = draft.request();
        double[] distances = new double[bars.size()];
        if (!request.barDistancesM().isEmpty()) {
            for (int i = 0; i < distances.length; i++) {
                distances[i] = request.barDistancesM().get(i);
            }
            return distances;
        }
        double near = request.has(Input.DISTANCE) ? request.need(Input.DISTANCE)
                : draft.ground().solve(EyeTarget.eyeHeightM(request, draft.reader()), settings[0], 0).distanceM();
        double spacing = draft.reader().metres(draft.prefix() + "bar-spacing");
        for (int i = 0; i < distances.length; i++) {
            distances[i] = near + i * spacing;
        }
        return distances;
    }

    private void checkOrder(double[] settings, double[] distances) {
        for (int i = 1; i < settings.length; i++) {
            if (distances[i] <= distances[i - 1]) {
                throw new SitingException("the " + bars.get(i) + " bar must stand beyond the " + bars.get(i - 1) + " bar");
            }
            if (settings[i] <= settings[i - 1]) {
                throw new SitingException("the " + bars.get(i) + " bar must be set higher than the " + bars.get(i - 1) + " bar");
            }
        }
    }

    private void noteSpacing(LayoutBuilder draft, double[] distances) {
        double least = draft.reader().metres(draft.prefix() + "bar-spacing-least");
        double resolution = draft.reader().degrees(draft.prefix() + "resolution");
        for (int i = 1; i < distances.length; i++) {
            double spacing = distances[i] - distances[i - 1];
            if (spacing < least) {
                draft.reader().note(String.format(Locale.ROOT,
                        "FAULT: the %s bar stands %.2f m behind the %s bar, less than %.1f m; beyond %.0f m an eye that splits %.0f' "
                                + "sees them as one.",
                        bars.get(i), spacing, bars.get(i - 1), least, Ranges.splitRangeM(spacing, draft.slopeDeg(), resolution),
                        Angles.degToMinutes(resolution)));
            }
        }
    }

    private List<UnitPlan> units(LayoutBuilder draft, int count, double[] settings, double[] distances) {
        RuleReader reader = draft.reader();
        double inner = draft.halfWidthM() + reader.metres(draft.prefix() + "inner-unit-to-edge");
        double spacing = reader.metres(draft.prefix() + "unit-spacing");
        double width = reader.minutes(draft.prefix() + "transition-width");
        List<UnitPlan> units = new ArrayList<>();
        int[] perBar = boxes.get(count);
        for (int bar = 0; bar < bars.size(); bar++) {
            double lens = draft.ground().lensAt(distances[bar]);
            for (int box = 0; box < perBar[bar]; box++) {
                String id = bars.get(bar).substring(0, 1).toUpperCase(Locale.ROOT) + (box + 1);
                units.add(UnitPlan.twoColour(id, bar + 1, new FramePoint(distances[bar], inner + box * spacing, lens), settings[bar], width,
                        Light.RED, Light.WHITE));
            }
        }
        return Sides.place(units, count >= twoSidedFrom ? Side.BOTH : draft.request().side());
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        List<Colour> colours = new ArrayList<>();
        for (int bar = 1; bar <= bars.size(); bar++) {
            int number = bar;
            List<Colour> ofBar = seen.stream().filter(one -> one.unit().bar() == number).map(one -> one.light().colour()).distinct()
                    .toList();
            colours.add(ofBar.size() == 1 ? ofBar.get(0) : Colour.NONE);
        }
        Map<String, Meaning> meanings = new LinkedHashMap<>();
        for (int i = 1; i < colours.size(); i++) {
            meanings.put(pathName(i), ofPair(colours.get(i - 1), colours.get(i)));
        }
        return meanings;
    }

    private String pathName(int far) {
        if (bars.size() == 2) {
            return "";
        }
        return far == 1 ? "lower" : "upper";
    }

    private static Meaning ofPair(Colour near, Colour far) {
        if (near == Colour.WHITE && far == Colour.WHITE) {
            return Meaning.ABOVE;
        }
        if (near == Colour.WHITE && far == Colour.RED) {
            return Meaning.ON_SLOPE;
        }
        return near == Colour.RED && far == Colour.RED ? Meaning.BELOW : Meaning.OUTSIDE;
    }

    @Override
    public List<String> remarks(List<SeenUnit> seen) {
        return meanings(seen).containsValue(Meaning.OUTSIDE)
                ? List.of("A near bar that is red under a far bar that is white is no signal of a healthy system.") : List.of();
    }

    /** Returns a map that keeps its order. */
    static Map<Integer, int[]> boxes(Object... pairs) {
        Map<Integer, int[]> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((Integer) pairs[i], (int[]) pairs[i + 1]);
        }
        return map;
    }
}
