package slopewright.model.util;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * The values that a number of the model can truly have; both ends belong to them.
 *
 * @param key   the feature, or class and feature joined by a dot, for which it is given
 * @param least the least, in the unit of the feature
 * @param most  the greatest, in the unit of the feature
 */
public record ValueRange(String key, double least, double most) {
    private static final String FILE = "ranges.properties";
    private static final Map<String, ValueRange> ALL = read();

    private static Map<String, ValueRange> read() {
        Properties properties = new Properties();
        try (InputStream in = ValueRange.class.getResourceAsStream(FILE);
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            properties.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
        Map<String, ValueRange> all = new HashMap<>();
        for (String key : properties.stringPropertyNames()) {
            String[] ends = properties.getProperty(key).strip().split("\\s+");
            all.put(key, new ValueRange(key, Double.parseDouble(ends[0]), Double.parseDouble(ends[1])));
        }
        return Map.copyOf(all);
    }

    /** Returns the range of a feature of a class, empty where any number may be true. */
    public static Optional<ValueRange> of(EClass type, EStructuralFeature feature) {
        ValueRange own = ALL.get(type.getName() + "." + feature.getName());
        return Optional.ofNullable(own == null ? ALL.get(feature.getName()) : own);
    }

    /** Returns the keys of all ranges. */
    public static Set<String> keys() {
        return ALL.keySet();
    }

    /** Returns whether a number lies within; what is no number does not. */
    public boolean contains(double value) {
        return value >= least && value <= most;
    }
}
