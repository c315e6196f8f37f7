package org.warmvat.cli.plot;

import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.warmvat.result.Period;

/** Months along the foot of a bar chart. */
final class Months {

    private static final int MONTHS_OF_A_YEAR = 12;

    private Months() {}

    /** Jan, Feb, ...; with the year where there are more than twelve. */
    static String label(Period month, List<Period> all) {
        YearMonth when = YearMonth.parse(month.label());
        String name = when.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        return all.size() > MONTHS_OF_A_YEAR ? name + " " + when.getYear() : name;
    }

    static CategoryAxis axis(List<Period> months) {
        CategoryAxis axis = Charts.dressed(new CategoryAxis());
        axis.setCategoryMargin(0.25);
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        if (months.size() > MONTHS_OF_A_YEAR) {
            axis.setCategoryLabelPositions(CategoryLabelPositions.UP_90);
        }
        return axis;
    }
}
