import { expect, it } from "vitest";
import { readText, verdictsOf } from "../support/table-verdicts.ts";

// Tables of our own invention in the spirit of what coaches keep. The verdict of every cell was written down by hand first.

it("a gym's list in another language: one unit said here and there, years in many forms, words of that language", () => {
  const read = readText(
    [
      "Navn;Kjønn;Nivå;Født;Vekt;Høyde;Knebøy;Markløft;Støt;Rykk;Roing 2000;Skade;Gruppe",
      "Åse Berg;K;regular;1990;61,2;170;92,5;115;65;50;7.45;nei;A",
      "Per Øst;M;ny;01.02.85;88,0;1.85;120;150;85;60;7:20;kne;B",
      "Lars Li;M;elite;1994-06-30;90 kg;183 cm;180;220;140;112,5;6:20;-;A",
      "Siv Dal;kvinne;regular;90;55;160 cm;80 kg;100kg;55;42,5;8:01;;A",
      "Gjennomsnitt;;;;73,6;;118;;;;;;",
    ].join("\n"),
  );
  expect(verdictsOf(read)).toEqual({
    B2: "female", C2: "regular", D2: "1990", E2: "61.2 kg", F2: "170 cm", G2: "92.5 kg", H2: "115 kg", I2: "65 kg", J2: "50 kg",
    K2: "asked", L2: "none", M2: "A",
    B3: "male", C3: "asked", D3: "1985", E3: "88.0 kg", F3: "185 cm", G3: "120 kg", H3: "150 kg", I3: "85 kg", J3: "60 kg",
    K3: "row 2000 m in 7:20", L3: "asked", M3: "B",
    B4: "male", C4: "elite", D4: "1994", E4: "90 kg", F4: "183 cm", G4: "180 kg", H4: "220 kg", I4: "140 kg", J4: "112.5 kg",
    K4: "row 2000 m in 6:20", M4: "A",
    B5: "female", C5: "regular", D5: "asked", E5: "55 kg", F5: "160 cm", G5: "80 kg", H5: "100 kg", I5: "55 kg", J5: "42.5 kg",
    K5: "row 2000 m in 8:01", M5: "A",
  }); // prettier-ignore
});

it("a test week: names turned, a row of units, doubts in words, a ditto mark, somebody twice, averages", () => {
  const read = readText(
    [
      "Autumn test week,,,,,,,,",
      '"Name (last, first)",Lvl,M/F,Born,Ht,Wt (kg),BS 1RM,C&J,Max burpees 7min',
      ",,,,cm,,kg,kg,reps",
      '"Vik, Ana",regular,F,12.03.1991,168,"63,5",100,70,92',
      '"Lie, Bo",comp.,M,1988,"1,82",84,150,110,~101',
      `"Dunn, Cy",Elite,m,14 Feb 1995,"5'11""",~92,95kg x 3,"142,5",n/a`,
      `"Ek, Di",new,f,'99,164cm,58 kg,"""",45,one hundred`,
      '"Holm, Eva",regular,F,3/4/93,n/a,100ish,85,?,5-8',
      '"Ås, Finn",regular,M,,190,95,2x bodyweight,105,88',
      '"Vik, Ana",regular,F,1991,168,64,105,"72,5",95',
      "Average,,,,172,,,,",
    ].join("\n"),
  );
  // Of somebody who stands there twice nothing is taken until it is said which row counts.
  expect(verdictsOf(read)).toEqual({
    B5: "asked", C5: "male", D5: "1988", E5: "asked", F5: "84 kg", G5: "150 kg", H5: "110 kg", I5: "101 burpees in ~7:00",
    B6: "elite", C6: "male", D6: "1995", E6: "5'11\"", F6: "~92 kg", G6: "3 x 95 kg", H6: "142.5 kg",
    B7: "new", C7: "female", D7: "asked", E7: "164 cm", F7: "58 kg", G7: "refused", H7: "45 kg", I7: "refused",
    B8: "regular", C8: "female", D8: "1993", F8: "~100 kg", G8: "85 kg", I8: "asked",
    B9: "regular", C9: "male", E9: "190 cm", F9: "95 kg", G9: "asked", H9: "105 kg", I9: "88 burpees in 7:00",
  }); // prettier-ignore
});

it("crews that mix pounds and kilograms: a bare number beside both is never read in either", () => {
  const read = readText(
    [
      "Athlete\tDiv\tWeight\tDL\tClean\t500m row\tLast tested\tCoach's notes",
      "Jo Marsh\tWomen\t140 lbs\t265\t155#\t1:45\tSept 2026\t",
      "Kim Roe\tWomen\t62kg\t120 kg\t70 kg\t1:50.3\t\tpregnant - 14wks",
      "Lee Fox\tMen\t205\t455\t275\t98s\tSept 2026\tall well",
      "Max Orr\tMen\t180lb\t405\t245\t0.001134\t\t",
      "total\t\t\t1245\t\t\t\t",
    ].join("\n"),
  );
  expect(verdictsOf(read)).toEqual({
    B2: "Women", C2: "140 lb", D2: "asked", E2: "155 lb (2026-09-15)", F2: "row 500 m in 1:45 (2026-09-15)",
    B3: "Women", C3: "62 kg", D3: "120 kg", E3: "70 kg", F3: "row 500 m in 1:50.3", H3: "asked",
    B4: "Men", C4: "asked", D4: "asked", E4: "asked", F4: "row 500 m in 1:38 (2026-09-15)", H4: "all well",
    B5: "Men", C5: "180 lb", D5: "asked", E5: "asked", F5: "asked",
  }); // prettier-ignore
  expect(read.questions.at(-1)?.text).toBe(
    'your 500m row says "0.001134", but this is a part of a day, as spreadsheets keep times. Is it 1:38?',
  );
});

it("M beside H may be hombre's other, and is asked about", () => {
  const read = readText("Nombre,Nivel,Sexo\nEva,new,M\nJuan,new,H\n");
  expect(verdictsOf(read)).toEqual({ B2: "new", B3: "new", C2: "asked", C3: "male" });
  expect(verdictsOf(readText("Nom,Niveau,Sexe\nEva,new,F\nJean,new,H\nMia,new,K\n"))).toMatchObject({
    C2: "female",
    C3: "male",
  });
});
