package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;

import slopewright.checks.Measure;

/**
 * The one of several items, such as the units of a side, that is nearest to its limit or farthest beyond it.
 *
 * @param item    the item
 * @param measure what was measured of it
 * @param <T>     what is compared
 */
public record Worst<T>(T item, Measure measure) {

    /**
     * Finds the worst of several items. Where an input of an item is missing, another item that is beyond its limit still decides; else
     * what is missing ends the rule.
     *
     * @param items   at least one
     * @param compare compares one with its limit, all in the same unit
     * @return the worst
     * @throws Stop where inputs are missing and nothing is known to be beyond its limit
     */
    public static <T> Worst<T> of(Collection<? extends T> items, Function<? super T, Measure> compare) {
        List<Stop> stops = new ArrayList<>();
        Worst<T> worst = null;
        for (T item : items) {
            try {
                Worst<T> found = new Worst<>(item, compare.apply(item));
                worst = worst == null || found.measure.slack() < worst.measure.slack() ? found : worst;
            } catch (Stop stop) {
                stops.add(stop);
            }
        }
        if (!stops.isEmpty() && (worst == null || worst.measure.isMet())) {
            throw Stop.together(stops);
        }
        if (worst == null) {
            throw new IllegalArgumentException("nothing to compare");
        }
        return worst;
    }
}
