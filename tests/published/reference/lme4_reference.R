# Values that tests/published/stats_reference_test.cpp holds the variance components to.
#
# For development only: no check runs this. On Debian 12, where r-cran-lme4 (with nlme) is a package:
#     Rscript tests/published/reference/lme4_reference.R
# writes nested.csv (an invented sample: silo, face, place, value) and nested_fit.csv beside itself.
suppressMessages({library(lme4); library(nlme)})

seed <- 20260915
set.seed(seed)
script <- sub("^--file=", "", grep("^--file=", commandArgs(FALSE), value = TRUE))
here <- dirname(script)
provenance <- sprintf("# lme4 %s, nlme %s, %s (Debian 12); Rscript tests/published/reference/lme4_reference.R; random seed %d",
                      packageVersion("lme4"), packageVersion("nlme"), R.version.string, seed)

rows <- list()
for (silo in 1:9) {
  level <- 0.04 + rnorm(1, 0, 0.105)
  for (face in seq_len(sample(1:3, 1))) {
    atFace <- level + rnorm(1, 0, 0.085)
    for (place in seq_len(sample(2:5, 1))) {
      atPlace <- atFace + rnorm(1, 0, 0.10)
      for (core in seq_len(sample(1:4, 1)))
        rows[[length(rows) + 1]] <- data.frame(silo, face, place, value = round(atPlace + rnorm(1, 0, 0.173), 6))
    }
  }
}
nested <- do.call(rbind, rows)

write <- function(name, frame) {
  path <- file.path(here, name)
  writeLines(provenance, path)
  suppressWarnings(write.table(format(frame, digits = 12, trim = TRUE), path, append = TRUE, sep = ",", quote = FALSE, row.names = FALSE))
}
write("nested.csv", nested)

strict <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 1e5))
byLme4 <- lmer(value ~ 1 + (1 | silo / face / place), nested, REML = TRUE, control = strict)
parts <- as.data.frame(VarCorr(byLme4))
part <- function(name) parts$vcov[parts$grp == name]
byNlme <- lme(value ~ 1, random = ~ 1 | silo / face / place, nested, method = "REML",
              control = lmeControl(tolerance = 1e-10, msTol = 1e-12, maxIter = 200, msMaxIter = 200))
roots <- suppressWarnings(as.numeric(VarCorr(byNlme)[, "Variance"]))
roots <- roots[!is.na(roots)]  # silo, face, place, residual
fit <- data.frame(
  by = c("lme4", "nlme"),
  silo = c(part("silo"), roots[1]),
  face = c(part("face:silo"), roots[2]),
  place = c(part("place:(face:silo)"), roots[3]),
  residual = c(part("Residual"), roots[4]),
  mean = c(fixef(byLme4), fixef(byNlme)),
  mean_variance = c(vcov(byLme4)[1, 1], vcov(byNlme)[1, 1]),
  log_likelihood = c(logLik(byLme4), logLik(byNlme)))
write("nested_fit.csv", fit)
