Console.WriteLine("hotside");
