package org.barsheet.workbook.pen;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.film.FilmSheet;
import org.barsheet.workbook.typed.CarryingOver;
import org.barsheet.workbook.typed.SealedWorkbook;

/** The workbook being written, and what all of its sheets need. */
public final class Book implements Closeable {

  /** Rows kept at hand before they are written out. */
  private static final int WINDOW = 200;

  private static final String PROGRAM = "barsheet";

  /** The same in every workbook, so that the same film gives the same bytes. */
  @SuppressWarnings("JavaUtilDate") // what the spreadsheet library takes
  private static final Date NO_DATE = new Date(0);

  private final FilmSheet film;
  private final CarryingOver carrying;
  private final FilmIndex index;
  private final XSSFWorkbook document = new XSSFWorkbook();
  private final SXSSFWorkbook stream = new SXSSFWorkbook(document, WINDOW);
  private final Styles styles = new Styles(document);

  /**
   * @param carrying what people typed into the workbook that this one takes the place of
   */
  public Book(FilmSheet film, CarryingOver carrying) {
    this.film = film;
    this.carrying = carrying;
    this.index = new FilmIndex(film);
    describe(document.getProperties());
  }

  private void describe(POIXMLProperties properties) {
    properties.getCoreProperties().setTitle(SafeText.of(film.plan().title()));
    properties.getCoreProperties().setCreator(PROGRAM);
    properties.getCoreProperties().setCreated(Optional.of(NO_DATE));
    properties.getCoreProperties().setModified(Optional.of(NO_DATE));
    properties.getExtendedProperties().getUnderlyingProperties().setApplication(PROGRAM);
    properties.getCustomProperties().addProperty("fingerprint", SealedWorkbook.PLACEHOLDER);
    properties
        .getCustomProperties()
        .addProperty("people", carrying.isEmpty() ? SealedWorkbook.NOTHING_TYPED : "typed");
  }

  public FilmSheet film() {
    return film;
  }

  public FilmIndex index() {
    return index;
  }

  SXSSFWorkbook stream() {
    return stream;
  }

  Styles styles() {
    return styles;
  }

  public PageSize portrait() {
    return new PageSize(film.plan().film().paper(), false);
  }

  public PageSize landscape() {
    return new PageSize(film.plan().film().paper(), true);
  }

  SXSSFSheet addSheet(String name) {
    return stream.createSheet(name);
  }

  /** What shapes are drawn on: the sheet's one layer of drawings. */
  public XSSFDrawing drawing(String sheet) {
    return document.getSheet(sheet).createDrawingPatriarch();
  }

  /** A sheet with its title block; the first fact is the sheet's own, the others are the film's. */
  public SheetFrame frame(String name, PageSize page, List<Column> columns, String fact) {
    SheetFrame frame = new SheetFrame(addSheet(name), styles, carrying, page, columns);
    frame.title(
        film.plan().title(),
        List.of(fact, SheetWords.counting(film.plan().film()), SheetWords.versions(film)));
    return frame;
  }

  /** Names a range of cells: rows and columns from 0, the last ones included. */
  public void name(String name, Address first, int lastRow, int lastColumn) {
    Address last = new Address(first.sheet(), Math.max(first.row(), lastRow), lastColumn);
    XSSFName range = document.createName();
    range.setNameName(name);
    range.setRefersToFormula("'" + first.sheet() + "'!" + first.absolute() + ":" + last.absolute());
  }

  public void writeTo(OutputStream out) throws IOException {
    stream.write(out);
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }
}
