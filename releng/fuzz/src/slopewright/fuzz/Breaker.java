package slopewright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Breaks an input: a text by its lines, values and marks, another by its bytes. The same number gives the same input. */
final class Breaker {

    private static final Pattern VALUE = Pattern.compile("\"[^\"\\n]*\"|(?<=[,:\\[ ])-?\\d+(?:\\.\\d+)?(?=[,\\]\\s}])");
    private static final Pattern ATTRIBUTE = Pattern.compile(" [A-Za-z:]+=\"[^\"\\n]*\"");
    private static final int MOST_CHANGES = 6;
    private static final int LONG = 20_000;

    private static final List<String> ODD = List.of("", "0", "-0", "-1", "1", "NaN", "Infinity", "-Infinity", "1e308", "-1e308", "1e-320",
            "1e15", "999999999999999999999", "2147483648", "0x10", "1,5", "1.5.5", "90", "-90", "180.0000001", "360", "true", "null", "'",
            "&quot;", "&lt;", "&#1;", "&#x202e;", "&#10;", "\u00e4\u0301", "\ud83d\ude00", "=1+1", "@SUM(1)",
            "../../../../etc/passwd", "/dev/zero", "%s%n",
            "${user.home}", "\\", "\\u0000", "approach-aid-1", "//@aerodrome", "four-unit-row", "icao:5th", "nobody", "A",
            "2026-02-30", "9999-12-31");

    private static final List<String> NUMBERS = List.of("-0.0", "1e308", "-1e308", "1e-320", "1e15", "1e9", "-1e9", "90.0", "89.9999999",
            "-90.0", "180.0", "360.0", "359.9999999", "1e-9", "0.001", "1000000.0", "NaN", "2147483647", "-2147483648", "9999999999");

    private static final List<String> MARKS = List.of("<", ">", "/>", "<a>", "</a>", "<!--", "-->", "<![CDATA[", "]]>", "<?x y?>",
            "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]>", "&b;", "{", "}", "[", "]", ",", ";", "\t", "\r", "\u0000",
            "\ufeff", "\"", "\"\"",
            "{{verdict}}", "{{", "}}", "  0\nSECTION\n", "  0\nEOF\n", "<coordinates>1,2,3</coordinates>",
            "xmi:id=\"a\"", "url(http://x/)");

    private final Random random;

    Breaker(long number) {
        random = new Random(number * 0x9E3779B97F4A7C15L + 1);
    }

    <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    int upTo(int most) {
        return random.nextInt(most);
    }

    double gaussian() {
        return random.nextGaussian();
    }

    /** A length in metres from a millimetre to a hundred metres. */
    double size() {
        return Math.pow(10, random.nextDouble() * 5 - 3);
    }

    /** A number that is another, mostly a little. */
    double near(double number) {
        return switch (random.nextInt(10)) {
            case 0 -> -number;
            case 1 -> 0;
            case 2 -> number * 10;
            case 3 -> number / 10;
            case 4 -> number + random.nextGaussian() * 100;
            case 5, 6 -> number + random.nextGaussian();
            default -> number * (1 + random.nextGaussian() * Math.pow(10, -1 - random.nextInt(4)));
        };
    }

    /** Two of three keep their form, and have a few values that are wrong: these come past the reader. */
    byte[] text(String whole, String other) {
        String text = whole;
        if (random.nextInt(3) > 0) {
            for (int left = 1 + random.nextInt(3); left > 0; left--) {
                text = value(text);
            }
            return text.getBytes(StandardCharsets.UTF_8);
        }
        for (int left = 1 + random.nextInt(MOST_CHANGES); left > 0; left--) {
            text = change(text, other);
        }
        return random.nextInt(20) == 0 ? bytes(text.getBytes(StandardCharsets.UTF_8)) : text.getBytes(StandardCharsets.UTF_8);
    }

    private String change(String text, String other) {
        int kind = random.nextInt(14);
        if (kind < 6) {
            return value(text);
        }
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        int to = random.nextInt(lines.size());
        switch (kind) {
            case 6 -> lines.remove(at);
            case 7 -> lines.add(to, lines.get(at));
            case 8 -> lines.set(at, lines.set(to, lines.get(at)));
            case 9 -> lines.add(at, one(Arrays.asList(other.split("\n", -1))));
            case 10 -> {
                List<String> block = List.copyOf(lines.subList(Math.min(at, to), Math.min(Math.max(at, to), Math.min(at, to) + 40)));
                for (int times = random.nextInt(30); times > 0; times--) {
                    lines.addAll(at, block);
                }
            }
            case 11 -> {
                return text.substring(0, random.nextInt(text.length() + 1));
            }
            case 12 -> {
                int place = random.nextInt(text.length() + 1);
                return text.substring(0, place) + one(MARKS) + text.substring(place);
            }
            default -> {
                List<MatchResult> found = ATTRIBUTE.matcher(text).results().toList();
                if (!found.isEmpty()) {
                    MatchResult gone = one(found);
                    return text.substring(0, gone.start()) + text.substring(gone.end());
                }
            }
        }
        return String.join("\n", lines);
    }

    private String value(String text) {
        List<MatchResult> found = VALUE.matcher(text).results().toList();
        if (found.isEmpty()) {
            return text;
        }
        MatchResult old = one(found);
        boolean isQuoted = old.group().startsWith("\"");
        String inside = isQuoted ? old.group().substring(1, old.group().length() - 1) : old.group();
        boolean isNumber = inside.matches("-?[\\d.]+");
        String fresh = isNumber && random.nextInt(5) > 0 ? number(inside) : switch (random.nextInt(8)) {
            case 0 -> inside + inside;
            case 1 -> "-" + inside;
            case 2 -> one(found).group().replace("\"", "");
            case 3 -> random.nextInt(10) == 0 ? "x".repeat(LONG) : inside + "0";
            default -> one(ODD);
        };
        return text.substring(0, old.start()) + (isQuoted ? "\"" + fresh + "\"" : fresh) + text.substring(old.end());
    }

    /** A number that is wrong in its size, its sign, or only a little. */
    private String number(String old) {
        return switch (random.nextInt(8)) {
            case 0 -> old.startsWith("-") ? old.substring(1) : "-" + old;
            case 1 -> old + "0";
            case 2 -> "0";
            case 3 -> String.valueOf(random.nextInt(400) - 200);
            case 4 -> one(NUMBERS);
            case 5 -> String.valueOf(random.nextGaussian() * Math.pow(10, random.nextInt(12) - 3));
            case 6 -> old.replaceFirst("\\d", String.valueOf(random.nextInt(10)));
            default -> old.contains(".") ? old.replace(".", "") : old + ".5";
        };
    }

    byte[] bytes(byte[] whole) {
        byte[] broken = whole.clone();
        for (int left = 1 + random.nextInt(MOST_CHANGES); left > 0 && broken.length > 0; left--) {
            int at = random.nextInt(broken.length);
            switch (random.nextInt(6)) {
                case 0 -> broken[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> broken[at] = (byte) random.nextInt();
                case 2 -> Arrays.fill(broken, at, Math.min(broken.length, at + 4), (byte) (random.nextBoolean() ? 0xff : 0));
                case 3 -> {
                    if (at + 4 <= broken.length) {
                        broken[at] = 0x7f;
                        Arrays.fill(broken, at + 1, at + 4, (byte) 0xff);
                    }
                }
                case 4 -> broken = Arrays.copyOf(broken, at);
                default -> System.arraycopy(broken, at, broken, random.nextInt(broken.length - at) / 2,
                        Math.min(8, broken.length - at) / 2);
            }
        }
        return broken;
    }
}
