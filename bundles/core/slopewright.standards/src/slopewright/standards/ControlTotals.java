package slopewright.standards;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Control totals of printed tables: the sum of all numbers that a table prints, by which a person who compared it confirms it. A number
 * that holds for several families counts for each of them.
 */
final class ControlTotals {
    private ControlTotals() {
    }

    /** Returns the total of the table with a key, empty where there is none. */
    static OptionalDouble of(RuleSet.Tables tables, String key) {
        return switch (key) {
            case "table.wheel-clearance" -> sum(tables.wheelClearance(), table -> table.groups().stream().flatMapToDouble(
                    group -> DoubleStream.of(group.fromM(), group.belowM(), group.minimumM(), group.lightAeroplaneM().orElse(0.0))));
            case "table.wheel-clearance-desired" -> sum(tables.wheelClearance(),
                    table -> table.groups().stream().mapToDouble(WheelClearanceTable.Group::desiredM));
            case "table.surface" -> sum(tables.surface(), table -> table.rows().stream().flatMapToDouble(ControlTotals::row));
            case "table.heliport-surface" -> sum(tables.heliport(), table -> table.rows().stream().flatMapToDouble(
                    row -> DoubleStream.concat(DoubleStream.of(row.startM(), row.divergencePercent(), row.lengthM()),
                            row.belowDeg().values().stream().mapToDouble(Double::doubleValue))));
            case "table.aiming-point" -> sum(tables.aimingPoint(), table -> table.bands().stream().flatMapToDouble(
                    band -> DoubleStream.of(band.fromM(), band.belowM(), band.distanceM()).filter(Double::isFinite)));
            case "table.crossing-height" -> sum(tables.crossingHeight(), table -> table.groups().stream().flatMapToDouble(
                    group -> DoubleStream.of(group.cockpitToWheelFt(), group.crossingHeightFt(), group.aboveFt(), group.belowFt())));
            default -> figure(tables.photometry().stream().filter(table -> table.citation().key().equals(key)).toList());
        };
    }

    private static OptionalDouble figure(List<PhotometryTable> tables) {
        return tables.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(tables.stream().flatMap(table -> table.contours().stream()).flatMapToDouble(
                        contour -> DoubleStream.of(contour.intensityCd(), contour.azimuthDeg(),
                                contour.shape() == PhotometryTable.Shape.AZIMUTH ? 0 : contour.elevationDeg())).sum());
    }

    private static DoubleStream row(SurfaceTable.Row row) {
        Stream<Double> byFamily = Stream.of(row.innerEdges().values(), row.lengths().values()).flatMap(numbers -> numbers.stream());
        return DoubleStream.concat(DoubleStream.of(row.code(), row.innerEdgeM(), row.startM(), row.divergencePercent(), row.lengthM()),
                DoubleStream.concat(byFamily.mapToDouble(Double::doubleValue),
                        row.slopes().values().stream().mapToDouble(SurfaceTable.Slope::deg)));
    }

    private static <T> OptionalDouble sum(Optional<T> table, java.util.function.Function<T, DoubleStream> numbers) {
        return table.isPresent() ? OptionalDouble.of(numbers.apply(table.get()).sum()) : OptionalDouble.empty();
    }
}
