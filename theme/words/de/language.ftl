### Was das Programm über die Sprache wissen muss.

decimal-mark = ,
