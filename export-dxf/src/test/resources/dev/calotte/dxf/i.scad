import(f);
