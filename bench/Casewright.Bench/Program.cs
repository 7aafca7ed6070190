Console.Error.WriteLine("usage: cutting FOLDER ... | schedule FOLDER ..."); return 2;
