package slopewright.siting.internal;

import java.util.List;

/** Two bars, trade name VASI: 2 or 4 units on one side, 12 on both. */
public final class TwoBar extends BarFamily {

    /** Made by the service loader. */
    public TwoBar() {
        super("two-bar", "VASI, two bars", List.of("near", "far"), boxes(4, new int[] {2, 2}, 2, new int[] {1, 1}, 12, new int[] {3, 3}),
                12);
    }
}
