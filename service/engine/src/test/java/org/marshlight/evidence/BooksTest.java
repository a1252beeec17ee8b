package org.marshlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.loop.Plan;
import org.marshlight.study.CalibrationRequest;
import org.marshlight.study.ComparisonRequest;
import org.marshlight.study.SensitivityRequest;
import org.marshlight.study.SizingRequest;
import org.marshlight.study.SweepRequest;
import org.marshlight.study.UncertaintyRequest;
import systems.uom.ucum.format.UCUMFormat;

/** Holds the books to the habits of the house. */
class BooksTest {

  private static final UCUMFormat UCUM = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);

  private static final List<Class<? extends Record>> REQUESTS =
      List.of(
          Plan.class,
          UncertaintyRequest.class,
          SensitivityRequest.class,
          SizingRequest.class,
          ComparisonRequest.class,
          SweepRequest.class,
          CalibrationRequest.class);

  @Test
  void everyCoefficientNamesAKnownSource() {
    for (CoefficientRow row : CoefficientBook.standard().rows()) {
      assertThat(SourceList.standard().find(row.source())).as(row.id()).isPresent();
      assertThat(row.note()).as(row.id()).isNotBlank();
    }
  }

  @Test
  void aCoefficientThatNobodyReadInASourceIsNotMarkedPublished() {
    for (CoefficientRow row : CoefficientBook.standard().rows()) {
      if (row.mark().equals(Mark.PUBLISHED.words())) {
        assertThat(SourceList.standard().find(row.source()).orElseThrow().read())
            .as(row.id())
            .isTrue();
      }
    }
  }

  @Test
  void everyFormulaNamesAKnownSource() {
    for (FormulaEntry entry : FormulaBook.standard().entries()) {
      assertThat(SourceList.standard().find(entry.source())).as(entry.id()).isPresent();
    }
  }

  @Test
  void unitsAreUcumCodes() {
    Set<String> units = new TreeSet<>();
    CoefficientBook.standard().rows().forEach(row -> units.add(row.unit()));
    for (FormulaEntry entry : FormulaBook.standard().entries()) {
      units.add(entry.unit());
      entry.parameters().forEach(parameter -> units.add(parameter.unit()));
    }
    for (String unit : units) {
      assertThatCode(() -> UCUM.parse(unit)).as(unit).doesNotThrowAnyException();
    }
  }

  @Test
  void somethingReadsEveryCoefficient() {
    Set<String> read = new TreeSet<>();
    for (EvidenceShelf shelf : EvidenceShelves.all()) {
      for (Class<? extends Record> type : shelf.coefficientRecords()) {
        CatalogueRow row = type.getAnnotation(CatalogueRow.class);
        for (RecordComponent component : type.getRecordComponents()) {
          String name = component.getAnnotation(Coefficient.class).value();
          if (row == null) {
            read.add(name);
          } else {
            Catalogues.standard()
                .ids(row.value())
                .forEach(id -> read.add(row.value() + "." + id + "." + name));
          }
        }
      }
    }
    for (Class<? extends Record> request : REQUESTS) {
      readAsDefaults(request, read);
    }
    Set<String> unread = new TreeSet<>();
    CoefficientBook.standard().rows().forEach(row -> unread.add(row.id()));
    unread.removeAll(read);
    assertThat(unread).isEmpty();
  }

  private static void readAsDefaults(Class<? extends Record> type, Set<String> read) {
    for (RecordShape.Field field : RecordShape.of(type).fields()) {
      field.quantity().map(Quantity::usual).ifPresent(read::add);
      if (field.elementType().isRecord()) {
        readAsDefaults(field.elementType().asSubclass(Record.class), read);
      }
    }
  }
}
