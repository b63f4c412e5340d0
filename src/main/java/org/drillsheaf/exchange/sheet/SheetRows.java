package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drillsheaf.drill.library.HouseLayer.Laid;
import org.drillsheaf.drill.library.Layers;

/** The rows of a sheet on its way out: two head rows, then one drill a row, with its stamp in the last cell. */
final class SheetRows {
    private final Layers layers;
    private final List<SheetColumn> columns;

    SheetRows(Layers layers) {
        this.layers = layers;
        this.columns = SheetColumns.of(SheetColumns.languages(layers.drills()));
    }

    /** Takes one row. */
    interface Sink {
        void row(int row, List<String> cells) throws IOException;
    }

    List<SheetColumn> columns() {
        return columns;
    }

    int drills() {
        return layers.drills().size();
    }

    void write(Sink sink) throws IOException {
        List<String> keys = new ArrayList<>();
        List<String> titles = new ArrayList<>();
        for (SheetColumn column : columns) {
            keys.add(column.key());
            titles.add(column.title());
        }
        keys.add(Stamp.head(columns));
        titles.add("Leave as it is");
        sink.row(0, keys);
        sink.row(1, titles);
        int row = 2;
        for (Map.Entry<String, Laid> drill : layers.drills().entrySet()) {
            sink.row(row++, cells(drill.getKey(), drill.getValue().node().json()));
        }
    }

    private List<String> cells(String id, JsonNode drill) {
        List<String> cells = new ArrayList<>();
        for (SheetColumn column : columns) {
            cells.add(CellText.escape(column.cell(drill)));
        }
        cells.add(Stamp.write(id, drill, columns));
        return cells;
    }
}
