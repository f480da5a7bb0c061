import { comparable } from "../../models/nearest.ts";
import type { Meaning } from "./meaning.ts";

const words = (list: string, meaning: Meaning): readonly (readonly [string, Meaning])[] =>
  list.split(",").map((word) => [comparable(word), meaning]);
const entry = (name: (Meaning & { kind: "entry" })["entry"]): Meaning => ({ kind: "entry", entry: name });
const passedOver = (why: string): Meaning => ({ kind: "passed over", why });

/** Usual headings by their comparable form; those of lifts and movements are found by the library. */
export const HEADING_WORDS: ReadonlyMap<string, Meaning> = new Map([
  ...words(
    "name,names,athlete,athletes,athlet,athletin,athlet/in,name last first,athlete name,full name,member,member name,nom,nombre,navn,namn,nome,imię,who,имя,名前,prénom nom,name vorname,competitor",
    { kind: "name" },
  ),
  ...words("first name,first,given name,forename,vorname,prénom,förnamn,fornavn,imie", {
    kind: "first name",
  }),
  ...words("last name,last,surname,family name,nachname,efternamn,etternavn,nazwisko,apellido,apellidos", {
    kind: "last name",
  }),
  ...words("level,levels,lvl,lv,experience,ability,niveau,nivel,nivå,tier,poziom", entry("level")),
  ...words(
    "division,div,category,class,cat,age group,age grp,age division,agegroup,ag,age class,altersklasse,kategorie,catégorie,categoría",
    entry("division"),
  ),
  ...words("sex,gender,m/f,f/m,geschlecht,sexe,sexo,kjønn,kön,płeć", entry("sex")),
  ...words(
    "body mass,body weight,bodyweight,bw,b/w,bm,wt,bwt,body wt,weight,mass,poids,gewicht,körpergewicht,vekt,vikt,peso,waga,masa",
    entry("body mass"),
  ),
  ...words("height,ht,tall,taille,größe,grösse,høyde,längd,altura,wzrost,statura", entry("height")),
  ...words(
    "born,birth,birth year,year of birth,yob,dob,d.o.b.,birthday,birthdate,birth date,date of birth,geburtsdatum,geburtstag,geboren,geb.,jahrgang,né en,né,né(e),né le,nacimiento,fecha de nacimiento,nato,født,født år,född,date de naissance,fødselsår,fødselsdato,födelseår,rok urodzenia",
    entry("born"),
  ),
  ...words("age,alter,âge,edad,ålder,alder,wiek", { kind: "age" }),
  ...words("gym,location,site,club,hall,salle,gimnasio", entry("gym")),
  ...words("group,groups,team,teams,squad,crew,gruppe,groupe,grupo,grupp,grupa", entry("group")),
  ...words("units,unit,kg or lb,kg/lb", entry("units")),
  ...words("recovery,recovers", entry("recovery")),
  ...words("habits,habit,tendencies,race habits", entry("habits")),
  ...words("share name,public name,nickname,name for the card", entry("share name")),
  ...words(
    "injuries,injury,injury / remarks,injury/remarks,injuries / remarks,limits,limitations,limitation,restrictions,restriction,health,medical,injuries/limits,injuries / limitations,verletzungen,verletzung,blessures,blessure,lesiones,lesión,skader,skade,skada,skador,kontuzje,kontuzja",
    entry("limits"),
  ),
  ...words(
    "note,notes,comment,comments,remarks,remark,coach notes,coach's notes,coachs notes,bemerkung,bemerkungen,notizen,remarques,commentaires,notas,uwagi,anything else",
    entry("note"),
  ),
  ...words(
    "tested,date,test date,tested on,date tested,last tested,updated,last updated,datum,datum test,när",
    {
      kind: "tested",
    },
  ),
  ...words(
    "email,e-mail,mail,phone,phone number,tel,mobile,cell,telephone,telefon,tlf,tel.,handy,whatsapp,téléphone,telefono,teléfono,address,emergency contact,contact,social",
    passedOver("how to reach somebody is no part of a plan"),
  ),
  ...words(
    "id,no,no.,nr,nr.,number,rank,ranking,place,pos,position,row,timestamp,member id,bib",
    passedOver("a number of the table's own"),
  ),
  ...words(
    "heat,heat no,heat no.,heat number,heat nr,wave,flight,lane,lanes,lane no,lane no.,station,bahn,lauf",
    passedOver(
      "the number of a heat or a lane says no start time; that stands under the workout's title and `start`",
    ),
  ),
  ...words(
    "total,totals,sum,average,avg,mean,sinclair,points,score total,summe,gesamt,moyenne,combined",
    passedOver("worked out of other columns"),
  ),
  ...words(
    "shirt,shirt size,t-shirt,paid,payment,membership,fee,waiver,coach,status,start date,joined,member since,goal,goals",
    passedOver("nothing a plan rests on"),
  ),
]);
