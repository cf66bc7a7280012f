package org.fretgloss.evaluation;

import com.google.gson.JsonArray;
import java.util.List;

/** One question to the analysis, and how often it gets the answers of a set of data. */
interface Measurement {

    /** The word by which the command line names the data: {@code phrases}, {@code keys}, {@code tabs}, {@code doubts}. */
    String name();

    /** Answers every case of the data; a figure for each line of the table. */
    List<Figure> measure(JsonArray cases);
}
