package slopewright.siting.internal;

import java.util.List;

/** Three bars, trade name VASI, with an upper path for tall cockpits: 6 units on one side, 16 on both (3, 3 and 2 a side). */
public final class ThreeBar extends BarFamily {

    /** Made by the service loader. */
    public ThreeBar() {
        super("three-bar", "VASI, three bars", List.of("near", "middle", "far"), boxes(6, new int[] {2, 2, 2}, 16, new int[] {3, 3, 2}),
                16);
    }
}
