package org.marshlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.RecordComponent;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every coefficient that a plan may set changes something: code asks for it. */
class CoefficientsAreReadTest {

  private static final JavaClasses ENGINE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.marshlight");

  /** What studies ask for by the name of a stage, each in turn. */
  private static final String READ_BY_ID = "study.discrepancy.";

  @Test
  void everyComponentOfACoefficientRecordIsAskedFor() {
    Set<String> unread = new TreeSet<>();
    for (EvidenceShelf shelf : EvidenceShelves.all()) {
      for (Class<? extends Record> type : shelf.coefficientRecords()) {
        JavaClass record = ENGINE.get(type);
        for (RecordComponent component : type.getRecordComponents()) {
          String id = component.getAnnotation(Coefficient.class).value();
          if (!id.startsWith(READ_BY_ID) && !isRead(record, component.getName())) {
            unread.add(type.getSimpleName() + "." + component.getName() + ": " + id);
          }
        }
      }
    }
    assertThat(unread).isEmpty();
  }

  private static boolean isRead(JavaClass record, String component) {
    JavaMethod accessor = record.getMethod(component);
    boolean asked =
        !accessor.getCallsOfSelf().isEmpty() || !accessor.getReferencesToSelf().isEmpty();
    return asked
        || record.getField(component).getAccessesToSelf().stream()
            .map(access -> access.getOrigin().getName())
            .anyMatch(name -> !name.equals(component) && !name.equals("<init>"));
  }
}
