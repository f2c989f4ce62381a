package slopewright.exchange.internal.sqlite;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The columns of a table as the statement that made it names them (sqlite.org, "CREATE TABLE"). */
final class TableColumns {

    private static final List<String> CONSTRAINTS = List.of("constraint", "primary", "unique", "check", "foreign");

    private static final Pattern INTEGER = Pattern.compile("(?is).*\\binteger\\b.*");
    private static final Pattern COLUMN_KEY = Pattern.compile("(?is).*\\bprimary\\s+key\\b.*");
    private static final Pattern WHOLE_KEY = Pattern.compile("(?is)(?:constraint\\s+\\S+\\s+)?primary\\s+key\\s*\\(([^,]*)\\)");
    private static final Pattern REMARK = Pattern.compile("(?s)('[^']*'|\"[^\"]*\"|`[^`]*`|\\[[^]]*])|--[^\n]*|/\\*.*?(?:\\*/|$)");

    private TableColumns() {
    }

    /** Returns their names in lower case, in the order of the values of a row; empty where they cannot be told. */
    static List<String> names(String sql) {
        List<String> names = new ArrayList<>();
        for (String part : parts(sql)) {
            String plain = part.toLowerCase(Locale.ROOT);
            if (plain.contains("generated always") || plain.matches("(?s).*\\bas\\s*\\(.*")) {
                return List.of(); // a column that is worked out is not stored
            }
            String name = name(part);
            if (part.startsWith("\"") || !CONSTRAINTS.contains(name)) {
                names.add(name);
            }
        }
        return names;
    }

    /**
     * Returns the column that stands for the id of a row, where a row holds no value of its own in it; empty where none does: an integer
     * that is the primary key, said at the column or for the whole table.
     */
    static Optional<String> id(String sql) {
        List<String> parts = parts(sql);
        Optional<String> whole = parts.stream().map(WHOLE_KEY::matcher).filter(Matcher::matches).map(key -> name(key.group(1).strip()))
                .findFirst();
        return parts.stream().filter(part -> INTEGER.matcher(part).matches()).filter(part -> COLUMN_KEY.matcher(part).matches()
                || whole.filter(name(part)::equals).isPresent()).map(TableColumns::name).findFirst();
    }

    private static String name(String part) {
        char quote = part.isEmpty() ? ' ' : part.charAt(0);
        int end = "\"`'".indexOf(quote) >= 0 ? part.indexOf(quote, 1) : quote == '[' ? part.indexOf(']') : -1;
        String name = end > 0 ? part.substring(1, end) : part.split("[\\s(]", 2)[0];
        return name.toLowerCase(Locale.ROOT);
    }

    private static String withoutRemarks(String sql) {
        return REMARK.matcher(sql).replaceAll(found -> found.group(1) == null ? " " : Matcher.quoteReplacement(found.group(1)));
    }

    /** Returns what stands between the outer brackets, parted by commas that stand in no bracket and no quotes. */
    private static List<String> parts(String sql) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        int depth = 0;
        char quote = 0;
        for (char each : withoutRemarks(sql).toCharArray()) {
            boolean begins = quote == 0 && "\"'`[".indexOf(each) >= 0;
            boolean ends = quote != 0 && each == (quote == '[' ? ']' : quote);
            boolean plain = quote == 0 && !begins;
            quote = begins ? each : ends ? 0 : quote;
            depth += plain && each == '(' ? 1 : 0;
            boolean last = plain && each == ')' && depth == 1;
            if (plain && each == ',' && depth == 1 || last) {
                parts.add(part.toString().strip());
                part.setLength(0);
            } else if (depth > 1 || depth == 1 && !(plain && each == '(')) {
                part.append(each);
            }
            depth -= plain && each == ')' ? 1 : 0;
        }
        return parts;
    }
}
