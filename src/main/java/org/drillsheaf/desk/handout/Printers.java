package org.drillsheaf.desk.handout;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.List;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** The printers of this machine. Blocks. */
final class Printers {
    private Printers() {}

    /** The usual one first. */
    static List<String> names() {
        PrintService usual = PrintServiceLookup.lookupDefaultPrintService();
        List<String> names = new java.util.ArrayList<>();
        if (usual != null) {
            names.add(usual.getName());
        }
        for (PrintService service : PrintServiceLookup.lookupPrintServices(null, null)) {
            if (!names.contains(service.getName())) {
                names.add(service.getName());
            }
        }
        return List.copyOf(names);
    }

    /** Prints every page at its own size. */
    static void print(String printer, String title, byte[] pdf) throws IOException, PrinterException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrinterJob job = PrinterJob.getPrinterJob();
            for (PrintService service : PrintServiceLookup.lookupPrintServices(null, null)) {
                if (service.getName().equals(printer)) {
                    job.setPrintService(service);
                }
            }
            job.setJobName(title);
            job.setPageable(new PDFPageable(document));
            job.print();
        }
    }
}
