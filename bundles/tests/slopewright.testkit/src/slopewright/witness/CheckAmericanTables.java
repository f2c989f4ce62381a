package slopewright.witness;

import java.util.Arrays;
import java.util.Map;

/** Printed tables of the United States pack (sections 3, 4, 8, 9 and 10). */
final class CheckAmericanTables {
    private static final Edition ED = Edition.FAA_2010;
    private static final double FT = Angles.FOOT_M;
    private static final String ANGLES = """
        3.00 3.5000 3.1667 2.8333 2.5000 3.5833 3.2500 2.7500 2.4167 3.2500 2.7500
        3.20 3.7000 3.3667 3.0333 2.7000 3.7833 3.4500 2.9500 2.6167 3.4500 2.9500
        3.50 4.0000 3.6667 3.3333 3.0000 4.0833 3.7500 3.2500 2.9167 3.7500 3.2500
        4.00 4.5000 4.1667 3.8333 3.5000 4.5833 4.2500 3.7500 3.4167 4.2500 3.7500
        """;
    private static final String DISTANCES = """
        40 763.25 808.22 832.75 653.99 572.03
        45 858.65 909.25 936.85 735.74 643.53
        50 954.06 1010.28 1040.94 817.49 715.03
        75 1431.09 1515.42 1561.41 1226.24 1072.55
        """;
    private static final String WHEELS = """
        12 28 33 38 63
        19 21 26 31 56
        21 19 24 29 54
        23 17 22 27 52
        24 16 21 26 51
        26 14 19 24 49
        30 10 15 20 45
        33 7 12 17 42
        38 2 7 12 37
        45 -5 0 5 30
        """;
    private static final String GLIDE = """
        40 4.24 5.64 7.04 8.43 9.80 11.17 12.53 13.87 16.50
        50 3.39 4.52 5.64 6.76 7.87 8.98 10.08 11.17 13.33
        60 2.83 3.77 4.70 5.64 6.57 7.50 8.43 9.35 11.17
        70 2.42 3.23 4.03 4.84 5.64 6.44 7.24 8.03 9.61
        80 2.12 2.83 3.53 4.24 4.94 5.64 6.34 7.04 8.43
        90 1.89 2.51 3.14 3.77 4.39 5.02 5.64 6.26 7.50
        100 1.70 2.26 2.83 3.39 3.95 4.52 5.08 5.64 6.76
        110 1.54 2.06 2.57 3.08 3.60 4.11 4.62 5.13 6.15
        120 1.41 1.89 2.36 2.83 3.30 3.77 4.24 4.70 5.64
        130 1.31 1.74 2.18 2.61 3.04 3.48 3.91 4.34 5.21
        140 1.21 1.62 2.02 2.42 2.83 3.23 3.63 4.03 4.84
        """;
    private static final String DESCENT = """
        40 177 212 248 283 319 354 426 533 642 861
        60 265 318 372 425 478 532 639 800 962 1292
        80 354 425 496 567 638 709 852 1067 1283 1722
        100 442 531 619 708 797 886 1064 1333 1604 2153
        120 531 637 743 850 956 1063 1277 1600 1925 2583
        140 619 743 867 991 1116 1240 1490 1867 2246 3014
        """;
    private static final String CHART = """
        2.0 105 160 210 265 320 370 425 475 530 585 635
        2.5 130 200 265 330 395 465 530 595 665 730 795
        3.0 160 240 320 395 480 555 635 715 795 875 955
        3.5 185 280 370 465 555 650 740 835 925 1020 1110
        4.0 210 315 425 530 635 740 845 955 1060 1165 1270
        4.5 240 355 475 595 715 835 955 1075 1190 1310 1430
        5.0 265 395 530 660 795 925 1060 1190 1325 1455 1590
        5.5 290 435 580 730 875 1020 1165 1310 1455 1600 1745
        6.0 315 475 635 795 955 1110 1270 1430 1590 1745 1905
        6.5 345 515 690 860 1030 1205 1375 1550 1720 1890 2065
        7.0 370 555 740 925 1110 1295 1480 1665 1850 2035 2220
        7.5 395 595 790 990 1190 1390 1585 1785 1985 2180 2380
        8.0 425 635 845 1055 1270 1480 1690 1905 2115 2325 2540
        8.5 450 675 900 1120 1345 1570 1795 2020 2245 2470 2695
        9.0 475 715 950 1190 1425 1665 1900 2140 2375 2615 2855
        9.5 500 750 1005 1255 1505 1755 2005 2255 2510 2760 3010
        10.0 530 790 1055 1320 1585 1845 2110 2375 2640 2900 3165
        10.5 555 830 1105 1385 1660 1940 2215 2490 2770 3045 3320
        11.0 580 870 1160 1450 1740 2030 2320 2610 2900 3190 3480
        11.5 605 910 1210 1515 1820 2120 2425 2725 3030 3335 3635
        12.0 630 945 1260 1575 1890 2205 2520 2835 3150 3465 3780
        """;

    private CheckAmericanTables() {
    }

    static void run(Ledger ledger) {
        angles(ledger);
        distances(ledger);
        bars(ledger);
        descent(ledger);
        wheels(ledger);
    }

    private static double[][] read(String text) {
        return text.lines().map(line -> Arrays.stream(line.trim().split(" ")).mapToDouble(Double::parseDouble).toArray())
            .toArray(double[][]::new);
    }

    private static void angles(Ledger ledger) {
        ledger.heading("4.1 absolute angles");
        for (double[] row : read(ANGLES)) {
            Map<String, Double> standard = Settings.row(ED, Family.FOUR_UNIT_ROW, Variant.STANDARD, row[0]);
            Map<String, Double> wide = Settings.row(ED, Family.FOUR_UNIT_ROW, Variant.GLIDE_PATH, row[0]);
            Map<String, Double> two = Settings.row(ED, Family.TWO_UNIT_ROW, Variant.STANDARD, row[0]);
            String[] letters = {"D", "C", "B", "A"};
            for (int i = 0; i < 4; i++) {
                ledger.number(row[0] + " standard " + letters[i], standard.get(letters[i]), row[1 + i], 5e-5);
                ledger.number(row[0] + " group 4 " + letters[i], wide.get(letters[i]), row[5 + i], 5e-5);
            }
            ledger.number(row[0] + " two B", two.get("B"), row[9], 5e-5);
            ledger.number(row[0] + " two A", two.get("A"), row[10], 5e-5);
        }
    }

    private static void distances(Ledger ledger) {
        ledger.heading("4.2 distances on a level runway, ft");
        Ground flat = Ground.lensAt(0);
        int group = 0;
        for (double[] row : read(DISTANCES)) {
            group++;
            Demand eye = new Demand.HeightGroup(group);
            ledger.number("group " + group + " crossing height", Siting.eyeHeightM(ED, eye) / FT, row[0], 1e-9);
            ledger.number("3.00", Siting.slopeDistanceM(flat, 3, row[0] * FT) / FT, row[1], 0.05);
            ledger.number("four, lowest on course",
                Siting.solve(Plan.of(ED, Family.FOUR_UNIT_ROW, 3, 45), flat, eye).distanceM() / FT, row[2], 0.05);
            ledger.number("two, lowest on course",
                Siting.solve(Plan.of(ED, Family.TWO_UNIT_ROW, 3, 45), flat, eye).distanceM() / FT, row[3], 0.05);
            ledger.number("3.50", Siting.slopeDistanceM(flat, 3.5, row[0] * FT) / FT, row[4], 0.05);
            ledger.number("4.00", Siting.slopeDistanceM(flat, 4, row[0] * FT) / FT, row[5], 0.05);
        }
        double[][] bands = {{381.6, 858.7}, {477.0, 954.1}, {667.8, 1049.5}, {1144.9, 1526.5}};
        for (int i = 0; i < bands.length; i++) {
            String name = "group." + (i + 1) + ".crossing-";
            double height = Transcription.number(ED, Transcription.ALL, name + "height-ft");
            double low = height - Transcription.number(ED, Transcription.ALL, name + "tolerance-down-ft");
            double high = height + Transcription.number(ED, Transcription.ALL, name + "tolerance-up-ft");
            ledger.number("group " + (i + 1) + " least", Siting.slopeDistanceM(flat, 3, low * FT) / FT, bands[i][0], 0.051);
            ledger.number("group " + (i + 1) + " greatest", Siting.slopeDistanceM(flat, 3, high * FT) / FT, bands[i][1], 0.051);
        }
        ledger.number("8.15 reference point of a 21 ft crossing height", Siting.slopeDistanceM(flat, 3, 21 * FT) / FT, 400.7, 0.05);
        Sited four = Siting.solve(Plan.of(ED, Family.FOUR_UNIT_ROW, 3, 45).with(Variant.GLIDE_PATH), flat,
            new Demand.GlidePath(300, Double.NaN, 3, 0, 0, Double.NaN, 0, 4));
        ledger.number("4.3.2 group 4 beside a glide path, m", four.distanceM(), 391.44, 1e-6);
    }

    private static void bars(Ledger ledger) {
        ledger.heading("3.3 vertical angle between bars, minutes");
        double[][] rows = {{0.5, 41.5, 1.36}, {1, 20.7, 0.68}, {2, 10.4, 0.34}, {3, 6.9, 0.23}, {4, 5.2, 0.17}};
        for (double[] row : rows) {
            ledger.number("700 ft at " + row[0] + " NM", barMin(700, row[0] * 1852 / FT), row[1], row[0] < 1 ? 0.06 : 0.05);
            ledger.number("23 ft at " + row[0] + " NM", barMin(23, row[0] * 1852 / FT), row[2], 0.005);
        }
        ledger.number("23 ft at 4138 ft", barMin(23, 4138), 1, 0.0005);
        ledger.number("700 ft at 20.7 NM", barMin(700, 20.7 * 1852 / FT), 1, 0.005);
    }

    /** Spacing times sine of 3 degrees over the range, as an angle in minutes. */
    private static double barMin(double spacingFt, double rangeFt) {
        return 60 * Math.toDegrees(spacingFt * Math.sin(Math.toRadians(3)) / rangeFt);
    }

    private static void descent(Ledger ledger) {
        ledger.heading("10 descent");
        ledger.number("feet a nautical mile at 3 degrees", 1852 / FT * Angles.tanDeg(3), 318.4, 0.05);
        ledger.number("feet a nautical mile at 3.8 degrees", 1852 / FT * Angles.tanDeg(3.8), 403.6, 0.05);
        double[] rates = {300, 400, 500, 600, 700, 800, 900, 1000, 1200};
        for (double[] row : read(GLIDE)) {
            for (int i = 0; i < rates.length; i++) {
                ledger.number(row[0] + " kt " + rates[i] + " ft/min", Descent.slopeDeg(row[0], rates[i]), row[i + 1], 0.00501);
            }
        }
        double[] slopes = {2.5, 3, 3.5, 4, 4.5, 5, 6, 7.5, 9, 12};
        for (double[] row : read(DESCENT)) {
            for (int i = 0; i < slopes.length; i++) {
                ledger.number(row[0] + " kt " + slopes[i] + " degrees", Descent.descentFtMin(slopes[i], row[0]), row[i + 1], 0.501);
            }
        }
        for (double[] row : read(CHART)) {
            for (int i = 1; i < row.length; i++) {
                double speed = 15 + 15 * i;
                double sine = Descent.descentAlongPathFtMin(row[0], speed);
                if (row[0] > 11.5) {
                    ledger.number("chart " + row[0] + " " + speed + " (21 times the speed)", 21 * speed, row[i], 1e-9);
                } else {
                    ledger.number("chart " + row[0] + " " + speed + " kt, sine form", sine, row[i], 4);
                }
            }
        }
        double[] miles = {287, 297, 308, 318, 329, 340, 350, 361, 371, 382, 393};
        double[] rate = {574, 594, 616, 636, 658, 680, 700, 722, 742, 762, 786};
        for (int i = 0; i < miles.length; i++) {
            double deg = 2.7 + 0.1 * i;
            ledger.number("10.4 ft a NM at " + Math.round(deg * 10) / 10.0, 1852 / FT * Angles.tanDeg(deg), miles[i], 1);
            ledger.number("10.4 at 120 kt", Descent.descentFtMin(deg, 120), rate[i], 3);
        }
    }

    private static void wheels(Ledger ledger) {
        ledger.heading("9.1 wheel height over the threshold, ft");
        double[] crossing = {40, 45, 50, 75};
        for (double[] row : read(WHEELS)) {
            for (int i = 0; i < crossing.length; i++) {
                Sited sited = Siting.solve(Plan.of(ED, Family.FOUR_UNIT_ROW, 3, 45), Ground.lensAt(0), new Demand.HeightGroup(i + 1));
                ledger.number("EWH " + row[0] + " at " + crossing[i], sited.wheelClearanceM(row[0] * FT) / FT, row[i + 1], 1e-6);
            }
        }
    }
}
