package slopewright.exchange.map;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import slopewright.messages.Printable;

/**
 * One thing on a map.
 *
 * @param id         unique in its document
 * @param kind       what it is, one word: {@code unit}, {@code beam}, {@code sector-edge}, {@code surface}, {@code runway},
 *                   {@code threshold}, {@code helipad}, {@code obstacle}, {@code survey-point}
 * @param name       what people call it
 * @param shape      its shape
 * @param positions  one for a point, two or more for a line, three or more for an area; the first is not repeated at the end
 * @param properties further facts in their order: text, numbers, booleans; null where a fact is not known
 */
public record MapFeature(String id, String kind, String name, Shape shape, List<MapPosition> positions, Map<String, Object> properties) {

    /** Shapes of features. */
    public enum Shape {
        /** One position. */
        POINT,
        /** A line of straight pieces. */
        LINE,
        /** An area within one ring. */
        AREA
    }

    /**
     * Copies the parts, without what would steer a text.
     *
     * @throws IllegalArgumentException where there are too few positions for the shape
     */
    public MapFeature {
        positions = List.copyOf(positions);
        name = Printable.of(name);
        Map<String, Object> facts = new LinkedHashMap<>(properties);
        facts.replaceAll((key, fact) -> fact instanceof String text ? Printable.of(text) : fact);
        properties = Collections.unmodifiableMap(facts);
        if (positions.size() < shape.ordinal() + 1) {
            throw new IllegalArgumentException(id + " has too few positions");
        }
    }

    /** Returns whether the elevations of all positions are known. */
    boolean isHigh() {
        return positions.stream().allMatch(MapPosition::isHigh);
    }

    /** Returns the ring of an area counter-clockwise seen from above, its first position repeated at the end. */
    List<MapPosition> ring() {
        double twice = 0;
        for (int i = 0; i < positions.size(); i++) {
            MapPosition here = positions.get(i);
            MapPosition next = positions.get((i + 1) % positions.size());
            MapPosition origin = positions.get(0);
            twice += (here.longitudeDeg() - origin.longitudeDeg()) * (next.latitudeDeg() - origin.latitudeDeg())
                    - (next.longitudeDeg() - origin.longitudeDeg()) * (here.latitudeDeg() - origin.latitudeDeg());
        }
        int size = positions.size();
        boolean left = twice >= 0;
        return IntStream.rangeClosed(0, size).mapToObj(i -> positions.get((left ? i : size - i) % size)).toList();
    }
}
