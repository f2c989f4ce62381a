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
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
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
import slopewright.siting.UnshiftedDistance;
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
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        int count = layout.unitCount();
        double[] settings = settingsDeg(layout);
        LayoutBuilder.Laid laid = lay(layout, count, settings);
        LayoutBuilder.Place near = laid.place();
        double[] distances = distancesM(layout, near.distanceM());
        noteSpacing(layout, distances);
        for (int i = 1; i < bars.size() - 1; i++) {
            layout.reader().note(Message.of("siting.note.upper-path",
                    Words.m(distances[i] * layout.riseAlong(settings[i]) + layout.ground().lensAt(distances[i]))));
        }
        return layout.finish(laid, OptionalDouble.empty(), new Surfaces.Anchor(settings[0], near.distanceM(),
                UnshiftedDistance.of(near.distanceM()), near.lensM()));
    }

    private LayoutBuilder.Laid lay(LayoutBuilder layout, int count, double[] settings) {
        SitingRequest request = layout.request();
        if (request.isGiven()) {
            double distance = request.barDistancesM().isEmpty() ? request.need(Input.DISTANCE) : request.barDistancesM().get(0);
            LayoutBuilder.Place near = new LayoutBuilder.Place(new LevelSolution(distance, 0, LevelSolution.Method.GIVEN, distance,
                    layout.ground().lensAt(distance)));
            return layout.lay(near, units(layout, count, settings, near));
        }
        return layout.solveLeast(EyeTarget.eyeHeightM(request, layout.reader()), settings[0], 0,
                near -> units(layout, count, settings, near));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        List<UnitPlan> near = LayoutBuilder.bar(units, 1);
        double setting = near.stream().mapToDouble(UnitPlan::settingDeg).min().orElseThrow();
        double[] distances = new double[bars.size()];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = LayoutBuilder.centre(LayoutBuilder.bar(units, i + 1)).alongM();
        }
        noteSpacing(layout, distances);
        return layout.laid(units, LayoutBuilder.centre(near), setting, OptionalDouble.empty(), unshifted);
    }

    /** Takes the slope from given settings where it was not entered: midway of the lowest path. */
    private SitingRequest withSlope(SitingRequest request) {
        List<Double> settings = request.barSettingsDeg();
        if (!settings.isEmpty() && settings.size() != bars.size()) {
            throw new SitingException(Message.of("siting.refused.bar-settings", Words.name(name), Words.count(bars.size()),
                    Words.count(settings.size())));
        }
        if (!request.barDistancesM().isEmpty() && request.barDistancesM().size() != bars.size()) {
            throw new SitingException(Message.of("siting.refused.bar-distances", Words.name(name), Words.count(bars.size()),
                    Words.count(request.barDistancesM().size())));
        }
        if (settings.isEmpty() || request.has(Input.SLOPE)) {
            return request;
        }
        double slope = bars.size() == 2 ? (settings.get(0) + settings.get(1)) / 2 : settings.get(1);
        return request.toBuilder().set(Input.SLOPE, slope).build();
    }

    private double[] settingsDeg(LayoutBuilder layout) {
        double[] settings = new double[bars.size()];
        String tradition = layout.request().option("tradition").map(chosen -> chosen + "-").orElse("");
        for (int i = 0; i < settings.length; i++) {
            settings[i] = layout.request().barSettingsDeg().isEmpty()
                    ? layout.slopeDeg() + layout.reader().degrees(layout.prefix() + tradition + bars.get(i) + "-offset")
                    : layout.request().barSettingsDeg().get(i);
        }
        return settings;
    }

    private double[] distancesM(LayoutBuilder layout, double nearM) {
        List<Double> given = layout.request().barDistancesM();
        double[] distances = new double[bars.size()];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = given.isEmpty() ? nearM + i * layout.reader().metres(layout.prefix() + "bar-spacing") : given.get(i);
        }
        return distances;
    }

    private void checkOrder(double[] settings, double[] distances) {
        for (int i = 1; i < settings.length; i++) {
            if (distances[i] <= distances[i - 1]) {
                throw new SitingException(Message.of("siting.refused.bar-order", bar(i), bar(i - 1)));
            }
            if (settings[i] <= settings[i - 1]) {
                throw new SitingException(Message.of("siting.refused.bar-setting-order", bar(i), bar(i - 1)));
            }
        }
    }

    private Argument bar(int index) {
        return Words.term("siting-bar." + bars.get(index));
    }

    private void noteSpacing(LayoutBuilder layout, double[] distances) {
        double least = layout.reader().metres(layout.prefix() + "bar-spacing-least");
        double resolution = layout.reader().degrees(layout.prefix() + "resolution");
        for (int i = 1; i < distances.length; i++) {
            double spacing = distances[i] - distances[i - 1];
            if (spacing < least) {
                layout.reader().note(Message.of("siting.note.bars-too-close", bar(i), Words.m(spacing), bar(i - 1), Words.m(least),
                        Words.wholeM(Ranges.splitRangeM(spacing, layout.slopeDeg(), resolution)),
                        Words.min(Angles.degToMinutes(resolution))));
            }
        }
    }

    private List<UnitPlan> units(LayoutBuilder layout, int count, double[] settings, LayoutBuilder.Place near) {
        RuleReader reader = layout.reader();
        double[] distances = distancesM(layout, near.distanceM());
        checkOrder(settings, distances);
        double inner = layout.halfWidthM() + reader.metres(layout.prefix() + "inner-unit-to-edge");
        double spacing = reader.metres(layout.prefix() + "unit-spacing");
        double width = reader.minutes(layout.prefix() + "transition-width");
        List<UnitPlan> units = new ArrayList<>();
        int[] perBar = boxes.get(count);
        for (int bar = 0; bar < bars.size(); bar++) {
            double lens = layout.ground().lensAt(distances[bar]);
            for (int box = 0; box < perBar[bar]; box++) {
                String id = bars.get(bar).substring(0, 1).toUpperCase(Locale.ROOT) + (box + 1);
                units.add(UnitPlan.twoColour(id, bar + 1, new FramePoint(distances[bar], inner + box * spacing, lens), settings[bar], width,
                        Light.RED, Light.WHITE));
            }
        }
        return Sides.place(units, count >= twoSidedFrom ? Side.BOTH : layout.request().side());
    }

    /** Two bars that a healthy system does not show together make the whole pattern none: no path of it is told. */
    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        List<Colour> colours = new ArrayList<>();
        for (int bar = 1; bar <= bars.size(); bar++) {
            int number = bar;
            List<Colour> ofBar = seen.stream().filter(lamp -> lamp.unit().bar() == number).map(lamp -> lamp.light().colour()).distinct()
                    .toList();
            colours.add(ofBar.size() == 1 ? ofBar.get(0) : Colour.NONE);
        }
        Map<String, Meaning> meanings = new LinkedHashMap<>();
        for (int i = 1; i < colours.size(); i++) {
            meanings.put(pathName(i), ofPair(colours.get(i - 1), colours.get(i)));
        }
        if (meanings.containsValue(Meaning.OUTSIDE)) {
            meanings.replaceAll((path, meaning) -> Meaning.OUTSIDE);
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
    public List<Message> remarks(List<SeenUnit> seen) {
        return meanings(seen).containsValue(Meaning.OUTSIDE) ? List.of(Message.of("siting.remark.bars-out-of-order")) : List.of();
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
