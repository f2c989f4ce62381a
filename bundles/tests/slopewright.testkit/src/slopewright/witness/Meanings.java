package slopewright.witness;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The meaning of a pattern of lights. */
public final class Meanings {
    private Meanings() {
    }

    /** The meaning of what is seen; {@code upper} asks for the upper path of three bars (middle and far). */
    public static Meaning of(Family family, List<Seen> seen, boolean upper) {
        return switch (family) {
            case FOUR_UNIT_ROW, TWO_UNIT_ROW -> rows(seen);
            case TWO_BAR -> pair(bar(seen, "near"), bar(seen, "far"));
            case THREE_BAR -> upper ? threeUpper(seen) : threeLower(seen);
            case T_FORM, T_FORM_ABBREVIATED -> tForm(seen);
            case HELIPORT_SECTOR -> sector(seen.get(0));
            case HELIPORT_PAIR -> heliportPair(seen);
            case TRI_COLOUR -> triColour(seen.get(0));
            case PULSATING -> pulsating(seen.get(0));
            case ALIGNMENT_PANELS -> Meaning.OUTSIDE;
        };
    }

    /** Rows, pack 3.3: each side by itself; the lower meaning where two sides differ. */
    private static Meaning rows(List<Seen> seen) {
        Map<String, List<Colour>> sides = new LinkedHashMap<>();
        for (Seen light : seen) {
            sides.computeIfAbsent(light.bar(), key -> new ArrayList<>()).add(light.colour());
        }
        Meaning lowest = null;
        for (List<Colour> side : sides.values()) {
            Meaning here = row(side);
            if (here == Meaning.OUTSIDE) {
                return here;
            }
            if (lowest == null || here.ordinal() > lowest.ordinal()) {
                lowest = here;
            }
        }
        return lowest;
    }

    /** One row from the runway outward: red units nearest the runway, white outside; any other order is a fault. */
    private static Meaning row(List<Colour> colours) {
        int white = 0;
        for (Colour colour : colours) {
            if (colour == Colour.NONE) {
                return Meaning.OUTSIDE;
            }
            if (colour == Colour.WHITE) {
                white++;
            } else if (white > 0) {
                return Meaning.OUTSIDE;
            }
        }
        if (colours.size() == 2) {
            return List.of(Meaning.WELL_BELOW, Meaning.ON_SLOPE, Meaning.WELL_ABOVE).get(white);
        }
        return List.of(Meaning.WELL_BELOW, Meaning.BELOW, Meaning.ON_SLOPE, Meaning.ABOVE, Meaning.WELL_ABOVE).get(white);
    }

    /** The one colour of a bar, or NONE where its lights differ. */
    private static Colour bar(List<Seen> seen, String bar) {
        Colour colour = null;
        for (Seen light : seen) {
            if (light.bar().equals(bar)) {
                if (colour != null && colour != light.colour()) {
                    return Colour.NONE;
                }
                colour = light.colour();
            }
        }
        return colour == null ? Colour.NONE : colour;
    }

    /** Two bars, US pack 2.1: white over white above, red over white on, red over red below; white over red is a fault. */
    private static Meaning pair(Colour near, Colour far) {
        if (near == Colour.WHITE && far == Colour.WHITE) {
            return Meaning.ABOVE;
        }
        if (near == Colour.WHITE && far == Colour.RED) {
            return Meaning.ON_SLOPE;
        }
        return near == Colour.RED && far == Colour.RED ? Meaning.BELOW : Meaning.OUTSIDE;
    }

    /** Lower path of three bars: near and middle (US pack 2.2). */
    private static Meaning threeLower(List<Seen> seen) {
        return fault(seen) ? Meaning.OUTSIDE : pair(bar(seen, "near"), bar(seen, "middle"));
    }

    /** Upper path of three bars: middle and far (US pack 2.2). */
    private static Meaning threeUpper(List<Seen> seen) {
        return fault(seen) ? Meaning.OUTSIDE : pair(bar(seen, "middle"), bar(seen, "far"));
    }

    private static boolean fault(List<Seen> seen) {
        return pair(bar(seen, "near"), bar(seen, "middle")) == Meaning.OUTSIDE
            || pair(bar(seen, "middle"), bar(seen, "far")) == Meaning.OUTSIDE;
    }

    /** T form, 5.3.5.8: bars only on slope, fly-down above, fly-up below, red bars well below. */
    private static Meaning tForm(List<Seen> seen) {
        int up = 0;
        int down = 0;
        for (Seen light : seen) {
            if (light.colour() != Colour.NONE && light.bar().equals("fly-up")) {
                up++;
            }
            if (light.colour() != Colour.NONE && light.bar().equals("fly-down")) {
                down++;
            }
        }
        Colour bars = bar(seen, "bar");
        if (bars == Colour.NONE || up > 0 && down > 0) {
            return Meaning.OUTSIDE;
        }
        if (bars == Colour.RED) {
            return Meaning.WELL_BELOW;
        }
        if (down > 0) {
            return Meaning.ABOVE;
        }
        return up > 0 ? Meaning.BELOW : Meaning.ON_SLOPE;
    }

    /** Heliport sector unit, Vol II Fig 5-14. */
    private static Meaning sector(Seen light) {
        if (light.colour() == Colour.GREEN) {
            return light.state() == State.FLASHING ? Meaning.ABOVE : Meaning.ON_SLOPE;
        }
        if (light.colour() == Colour.RED) {
            return light.state() == State.FLASHING ? Meaning.WELL_BELOW : Meaning.BELOW;
        }
        return Meaning.OUTSIDE;
    }

    /** Heliport pair, US pack 2.9, in either order. */
    private static Meaning heliportPair(List<Seen> seen) {
        int white = 0;
        int red = 0;
        for (Seen light : seen) {
            if (light.colour() == Colour.NONE) {
                return Meaning.OUTSIDE;
            }
            white += light.colour() == Colour.WHITE ? 1 : 0;
            red += light.colour() == Colour.RED ? 1 : 0;
        }
        if (white > 0 && red > 0) {
            return Meaning.OUTSIDE;
        }
        if (white > 0) {
            return white == 2 ? Meaning.WELL_ABOVE : Meaning.ABOVE;
        }
        if (red > 0) {
            return red == 2 ? Meaning.WELL_BELOW : Meaning.BELOW;
        }
        return Meaning.ON_SLOPE;
    }

    /** Tri-colour, US pack 2.5. */
    private static Meaning triColour(Seen light) {
        return switch (light.colour()) {
            case AMBER -> Meaning.ABOVE;
            case GREEN -> Meaning.ON_SLOPE;
            case RED -> Meaning.BELOW;
            default -> Meaning.OUTSIDE;
        };
    }

    /** Pulsating, US pack 2.6. */
    private static Meaning pulsating(Seen light) {
        boolean steady = light.state() == State.STEADY;
        return switch (light.colour()) {
            case WHITE -> steady ? Meaning.ON_SLOPE : Meaning.ABOVE;
            case RED -> steady ? Meaning.BELOW : Meaning.WELL_BELOW;
            default -> Meaning.OUTSIDE;
        };
    }
}
