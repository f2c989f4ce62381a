package slopewright.standards;

import java.util.List;
import java.util.Optional;

/**
 * Visual threshold crossing heights by height group of aeroplanes, in feet as printed.
 *
 * @param groups   the groups, lowest first
 * @param citation the printed table
 */
public record CrossingHeightTable(List<Group> groups, Citation citation) {

    /**
     * One height group.
     *
     * @param number           1 to 4
     * @param cockpitToWheelFt cockpit-to-wheel height, feet
     * @param crossingHeightFt visual threshold crossing height, feet
     * @param aboveFt          tolerance above, feet
     * @param belowFt          tolerance below, feet
     */
    public record Group(int number, double cockpitToWheelFt, double crossingHeightFt, double aboveFt, double belowFt) {
    }

    /** Copies the groups. */
    public CrossingHeightTable {
        groups = List.copyOf(groups);
    }

    /** Returns the group with a number. */
    public Optional<Group> group(int number) {
        return groups.stream().filter(group -> group.number() == number).findFirst();
    }
}
