package slopewright.report.internal.template;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.messages.Message;

/** Reads the declarations of a style and finds the first that would take something out of its place or out of sight. */
final class StyleDeclarations {

    private static final Set<String> LOOKS = Set.of("color", "text-align", "text-decoration", "text-transform", "letter-spacing",
            "word-spacing", "line-height", "vertical-align", "white-space", "width", "min-width", "max-width", "min-height",
            "orphans", "widows", "counter-reset", "counter-increment", "caption-side", "table-layout", "empty-cells", "word-wrap",
            "clear", "hyphens");
    private static final Pattern GROUPS = Pattern.compile("(background|border|padding|margin|font|list-style|page-break|break)(-[-a-z]+)?");
    private static final Set<String> DISPLAYS = Set.of("block", "inline", "inline-block", "table", "table-row", "table-cell", "list-item");
    private static final Set<String> FLOATS = Set.of("left", "right", "none");
    private static final Pattern NEGATIVE = Pattern.compile("(?<![-\\w#])-\\s*\\.?\\d");
    private static final Pattern LENGTH = Pattern.compile("(?<![-\\w#.])(\\d*\\.?\\d+)([a-z%]*)");
    private static final Map<String, Double> MM = Map.of("mm", 1.0, "cm", 10.0, "in", 25.4, "pt", 25.4 / 72, "px", 25.4 / 96, "pc", 25.4
            / 6, "em", 5.0, "ex", 3.0, "rem", 5.0);
    private static final double GREATEST_PART_MM = 80;
    private static final double GREATEST_WIDTH_MM = 300;
    private static final double SMALLEST_TYPE_MM = 5 * 25.4 / 72;

    private final Deque<Block> blocks = new ArrayDeque<>();
    private final StringBuilder pending = new StringBuilder();
    private Fault fault;
    private int line = 1;
    private int start = 1;

    /** What a pair of braces holds. */
    private enum Block {
        /** Declarations about elements. */
        ELEMENTS,
        /** Declarations about pages and their margins. */
        PAGES,
        /** More rules. */
        RULES
    }

    /**
     * What may not stand in a template.
     *
     * @param line    where it stands, from 1
     * @param message what it is
     */
    record Fault(int line, Message message) {
    }

    private StyleDeclarations() {
    }

    /** Reads a sheet without comments. */
    static StyleDeclarations ofSheet(String text) {
        StyleDeclarations read = new StyleDeclarations();
        read.blocks.push(Block.RULES);
        read.read(text);
        if (read.blocks.size() != 1 || !read.pending.toString().isBlank()) {
            read.refuse(Message.of("template.style.open"));
        }
        return read;
    }

    /** Reads the style of one element. */
    static StyleDeclarations ofElement(String text) {
        StyleDeclarations read = new StyleDeclarations();
        read.blocks.push(Block.ELEMENTS);
        read.read(text);
        read.declaration();
        if (read.blocks.size() != 1) {
            read.refuse(Message.of("template.style.braces-in-element"));
        }
        return read;
    }

    /** Returns the first declaration that may not stand in a template; empty where all may. */
    Optional<Fault> fault() {
        return Optional.ofNullable(fault);
    }

    private void read(String text) {
        char quote = 0;
        for (char letter : text.toCharArray()) {
            if (quote != 0) {
                quote = letter == quote ? 0 : quote;
                if (letter == '\n') {
                    refuse(Message.of("template.style.quotation"));
                    quote = 0;
                }
                pending.append(letter);
            } else if (letter == '"' || letter == '\'') {
                quote = letter;
                pending.append(letter);
            } else if (letter == '{') {
                open();
            } else if (letter == '}') {
                close();
            } else if (letter == ';') {
                declaration();
            } else {
                if (pending.toString().isBlank()) {
                    start = line;
                }
                pending.append(letter);
            }
            line += letter == '\n' ? 1 : 0;
        }
        if (quote != 0) {
            refuse(Message.of("template.style.quotation"));
        }
    }

    private void open() {
        String prelude = pending.toString().strip().toLowerCase(Locale.ROOT);
        pending.setLength(0);
        Block outer = blocks.isEmpty() ? Block.RULES : blocks.peek();
        boolean nested = outer == Block.PAGES && prelude.startsWith("@");
        if (outer != Block.RULES && !nested) {
            refuse(Message.of("template.style.nested"));
        }
        blocks.push(nested || prelude.startsWith("@page") ? Block.PAGES : prelude.startsWith("@media") ? Block.RULES : Block.ELEMENTS);
    }

    private void close() {
        declaration();
        if (blocks.size() < 2) {
            refuse(Message.of("template.style.braces"));
        } else {
            blocks.pop();
        }
    }

    private void declaration() {
        String text = pending.toString().strip();
        pending.setLength(0);
        if (text.isEmpty()) {
            return;
        }
        int colon = text.indexOf(':');
        if (blocks.peek() == Block.RULES || colon < 0) {
            refuse(Message.said("template.style.no-declaration", text));
            return;
        }
        judge(text.substring(0, colon).strip().toLowerCase(Locale.ROOT), text.substring(colon + 1).strip().toLowerCase(Locale.ROOT));
    }

    private void judge(String property, String value) {
        boolean pages = blocks.peek() == Block.PAGES;
        boolean known = LOOKS.contains(property) || GROUPS.matcher(property).matches() || "content".equals(property) && pages
                || "float".equals(property) && FLOATS.contains(value) || "display".equals(property) && DISPLAYS.contains(value);
        if (!known) {
            refuse(Message.said("template.style.hiding", property, value));
        } else if (!"content".equals(property)) {
            lengths(property, value);
        }
    }

    private void lengths(String property, String value) {
        String plain = value.replaceAll("\"[^\"]*\"|'[^']*'", "");
        if (NEGATIVE.matcher(plain).find()) {
            refuse(Message.said("template.style.negative", property, value));
        }
        boolean widths = property.endsWith("width") && !property.startsWith("border");
        boolean type = "font-size".equals(property) || "font".equals(property) || "line-height".equals(property);
        Matcher lengths = LENGTH.matcher(plain.replaceAll("[-\\w]+\\([^)]*\\)", ""));
        while (lengths.find()) {
            double number = Double.parseDouble(lengths.group(1));
            String unit = lengths.group(2);
            double mm = number * MM.getOrDefault(unit, 0.0);
            boolean tooLarge = "%".equals(unit) ? number > 150 : mm > (widths ? GREATEST_WIDTH_MM : GREATEST_PART_MM);
            boolean tooSmall = type && ("%".equals(unit) ? number < 60 : MM.containsKey(unit) ? mm < SMALLEST_TYPE_MM : number < 0.8);
            boolean unknown = !unit.isEmpty() && !"%".equals(unit) && !MM.containsKey(unit);
            if (tooLarge || tooSmall || unknown) {
                refuse(Message.said("template.style.size", property, value));
            }
        }
    }

    private void refuse(Message message) {
        if (fault == null) {
            fault = new Fault(Math.max(1, start), message);
        }
    }
}
