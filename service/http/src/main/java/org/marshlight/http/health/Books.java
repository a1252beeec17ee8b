package org.marshlight.http.health;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.jboss.logging.Logger;
import org.marshlight.http.catalogues.Catalogue;

/** Reads every book as the service starts, so that a bad one stops it there and not later. */
@ApplicationScoped
public class Books {

  private static final Logger LOG = Logger.getLogger(Books.class);

  void read(@Observes StartupEvent start) {
    for (Catalogue catalogue : Catalogue.all()) {
      LOG.debugf("%s: %d items", catalogue.name(), catalogue.items().size());
    }
  }
}
